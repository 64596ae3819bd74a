package hornbook.foot.wall;

import hornbook.foot.shape.GroundOutline;

/**
 * What a nail asks of the wall, filled from the rule base.
 *
 * @param spacing least distance between two nails along the edge, mm, above 0
 * @param toeClearance least distance of the first nail from the middle of the toe, mm
 * @param endClearance least distance from the end of a sound run, mm
 * @param leastThickness thinnest wall that takes a nail, mm
 * @param foreRearmost the rearmost nail of a fore foot, as a share of the way from the toe to the
 *     widest part
 * @param hindRearmost the rearmost nail of a hind foot, as a share of the bearing length
 * @param waivedRearmost the rearmost nail of any foot when those two are waived, as a share of the
 *     bearing length
 * @param regions where the named parts of the wall lie
 */
public record NailingLimits(
    double spacing,
    double toeClearance,
    double endClearance,
    double leastThickness,
    double foreRearmost,
    double hindRearmost,
    double waivedRearmost,
    CrackRegions regions) {
  public NailingLimits {
    if (!(spacing > 0)) {
      throw new IllegalArgumentException("nails need spacing: " + spacing);
    }
  }

  /** The rearmost nail, in mm along the edge from the middle of the toe. */
  public double rearmost(GroundOutline outline, boolean fore) {
    double back =
        fore ? foreRearmost * outline.toeToWidest() : hindRearmost * outline.bearingLength();
    return edgeAt(outline, back);
  }

  /** The rearmost nail when the usual limit is waived, in mm along the edge. */
  public double rearmostWaived(GroundOutline outline) {
    return edgeAt(outline, waivedRearmost * outline.bearingLength());
  }

  /** No nail goes behind the heel, whatever the limit. */
  private static double edgeAt(GroundOutline outline, double back) {
    return outline.edgeAt(Math.min(back, outline.bearingLength()));
  }
}
