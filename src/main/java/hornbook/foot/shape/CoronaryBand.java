package hornbook.foot.shape;

import hornbook.assessment.Measures;
import hornbook.foot.number.Unknown;

/**
 * The height of the coronary band along the wall, above the ground edge: measured at toe and heel,
 * taken to fall evenly from the one to the other along the bearing length. Unknown where toe
 * length, heel length or outline is not known.
 */
public record CoronaryBand(double toe, double heel, GroundOutline outline) {

  /**
   * Of a foot as measured.
   *
   * @param outline null when unknown
   */
  public static CoronaryBand of(Measures measures, GroundOutline outline) {
    return new CoronaryBand(
        Unknown.or(measures.toeLength()), Unknown.or(measures.heelLength()), outline);
  }

  public boolean known() {
    return outline != null && !Unknown.is(toe) && !Unknown.is(heel);
  }

  /**
   * How much of the bearing length lies ahead of a place on the edge, in parts of one.
   *
   * @param along the edge from the middle of the toe, mm; beyond the outlined heel it is the heel's
   */
  public double ahead(double along) {
    if (outline == null) {
      return Unknown.NUMBER;
    }
    double at = Math.min(along, outline.edgeLength());
    return outline.at(at).back() / outline.bearingLength();
  }

  /**
   * Height of the wall, mm.
   *
   * @param along the edge from the middle of the toe, mm; beyond the outlined heel it is the heel's
   */
  public double above(double along) {
    return toe + (heel - toe) * ahead(along);
  }
}
