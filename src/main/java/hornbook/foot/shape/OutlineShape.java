package hornbook.foot.shape;

/**
 * What the ground outline takes for granted where nothing was measured; all are shares, above 0 and
 * below 1.
 *
 * @param foreWidest share of the bearing length ahead of the widest part of a fore foot, when that
 *     was not measured
 * @param hindWidest the same of a hind foot
 * @param heelWidth how far the heel buttresses stand apart, as a share of the width
 * @throws IllegalArgumentException for any other share
 */
public record OutlineShape(double foreWidest, double hindWidest, double heelWidth) {
  public OutlineShape {
    check(foreWidest);
    check(hindWidest);
    check(heelWidth);
  }

  double widest(boolean fore) {
    return fore ? foreWidest : hindWidest;
  }

  private static void check(double share) {
    if (!(share > 0 && share < 1)) {
      throw new IllegalArgumentException("not a share between 0 and 1: " + share);
    }
  }
}
