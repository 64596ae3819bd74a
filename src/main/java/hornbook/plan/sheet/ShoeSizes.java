package hornbook.plan.sheet;

/**
 * Sizes of shoe from the kit's list, by width; null where the list has none wide enough, or is not
 * known.
 */
public record ShoeSizes(String before, String after) {
  public static final ShoeSizes NONE = new ShoeSizes(null, null);
}
