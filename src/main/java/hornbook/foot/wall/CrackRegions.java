package hornbook.foot.wall;

import hornbook.assessment.word.CrackPlace;
import hornbook.foot.number.Unknown;

/**
 * Where the named parts of the wall lie along the edge of one side, in shares of its length from
 * the middle of the toe. The ground circumference falls into five equal arcs, one of toe, two of
 * side, two of quarter (usda-1916, Gross anatomy), which puts the end of the toe at 0.2 and that of
 * the side at 0.6 of each side's edge; the book does not part the heel from the quarter.
 *
 * @param toeEnd where the toe ends and the side begins
 * @param sideEnd where the side ends and the quarter begins
 * @param heelStart where the heel begins, within the quarter
 * @throws IllegalArgumentException when they are not in that order from 0 to 1
 */
public record CrackRegions(double toeEnd, double sideEnd, double heelStart) {
  public CrackRegions {
    if (!(0 < toeEnd && toeEnd < sideEnd && sideEnd < heelStart && heelStart <= 1)) {
      throw new IllegalArgumentException("regions out of order");
    }
  }

  /**
   * Whether a share of the way along the edge lies in the part; an unknown part may be anywhere.
   */
  public boolean holds(CrackPlace place, double share) {
    return from(place) <= share && share <= to(place);
  }

  /** The middle of the part; unknown for the bar, which is no part of the edge. */
  public double middle(CrackPlace place) {
    return (from(place) + to(place)) / 2;
  }

  /** Where the part begins; a part unknown may begin anywhere. */
  double from(CrackPlace place) {
    if (place == null) {
      return 0;
    }
    return switch (place) {
      case TOE -> 0;
      case SIDE -> toeEnd;
      case QUARTER -> sideEnd;
      case HEEL -> heelStart;
      case BAR -> Unknown.NUMBER;
    };
  }

  /** Where the part ends. */
  double to(CrackPlace place) {
    if (place == null) {
      return 1;
    }
    return switch (place) {
      case TOE -> toeEnd;
      case SIDE -> sideEnd;
      case QUARTER, HEEL -> 1;
      case BAR -> Unknown.NUMBER;
    };
  }
}
