package hornbook.rulebook;

/**
 * A technique or a support: the word of the formats and the words of the trade.
 *
 * @param firstAid whether it may be done while a vet is awaited, and lets every defect of the foot
 *     wait
 * @param shoe whether a technique puts a shoe on, or a support is part of a shoe or fixed to one
 */
public record NamedOption(String id, String label, boolean firstAid, boolean shoe) {
  public NamedOption(String id, String label) {
    this(id, label, false, false);
  }
}
