package hornbook.plan;

/**
 * Sizes of shoe from the kit's list, by width; null where the list has none wide enough, or is not
 * known.
 */
public record Shoe(String before, String after) {
  static final Shoe NONE = new Shoe(null, null);
}
