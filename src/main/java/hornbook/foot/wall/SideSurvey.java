package hornbook.foot.wall;

import hornbook.assessment.Side;
import hornbook.assessment.WallState;
import hornbook.foot.number.Interval;
import hornbook.foot.number.Unknown;
import java.util.List;

/**
 * One side of the ground edge. Lengths in mm; what no stretch covers is unmapped, and may be in any
 * state.
 *
 * @param edge length of the side's edge, middle of the toe to heel buttress; unknown unknown
 * @param pieces the mapped pieces in order, none overlapping
 */
public record SideSurvey(Side side, double edge, List<MappedPiece> pieces) {

  /** Length certainly in the state. */
  public double length(WallState state) {
    double sum = 0;
    for (int i = 0; i < pieces.size(); i++) {
      if (pieces.get(i).stretch().state() == state) {
        sum += pieces.get(i).length();
      }
    }
    return sum;
  }

  /** Length certainly in the group of states. */
  public double length(WallGroup group) {
    double sum = 0;
    for (int i = 0; i < pieces.size(); i++) {
      if (pieces.get(i).group() == group) {
        sum += pieces.get(i).length();
      }
    }
    return sum;
  }

  /** Length certainly missing or separated. */
  public double defectLength() {
    return length(WallGroup.SEPARATED) + length(WallGroup.MISSING);
  }

  /** Length certainly missing or separated to more than a height, or to a height not measured. */
  double tallDefectLength(double height) {
    double sum = 0;
    for (int i = 0; i < pieces.size(); i++) {
      Double here = pieces.get(i).stretch().height();
      boolean tall = here == null || here > height;
      sum += tall && pieces.get(i).group().defect() ? pieces.get(i).length() : 0;
    }
    return sum;
  }

  /** Length missing or separated behind a share of the edge, mm; unknown without the edge. */
  Interval defectBehind(double share) {
    double from = share * edge;
    double lost = 0;
    double mapped = 0;
    for (int i = 0; i < pieces.size(); i++) {
      double here = pieces.get(i).behind(from);
      mapped += here;
      lost += pieces.get(i).group().defect() ? here : 0;
    }
    double open = edge - from - mapped;
    return Interval.between(lost, lost + (open < SAME ? 0 : open));
  }

  /** Share of the edge behind a share of it that is sound, or flared and so dressed, per cent. */
  public Interval strongShare(double share) {
    double from = share * edge;
    double strong = 0;
    double mapped = 0;
    for (int i = 0; i < pieces.size(); i++) {
      double here = pieces.get(i).behind(from);
      boolean holds =
          pieces.get(i).group() == WallGroup.SOUND
              || pieces.get(i).stretch().state() == WallState.FLARED;
      mapped += here;
      strong += holds ? here : 0;
    }
    double open = edge - from - mapped;
    return share(strong, open < SAME ? 0 : open, edge - from);
  }

  /** Length that no stretch covers; unknown when the edge is unknown. */
  public double unmapped() {
    double sum = 0;
    for (int i = 0; i < pieces.size(); i++) {
      sum += pieces.get(i).length();
    }
    double rest = edge - sum;
    return rest < SAME ? 0 : rest;
  }

  /** Share of the edge in the state, per cent. */
  public Interval share(WallState state) {
    return share(length(state), unmapped(), edge);
  }

  /** Share of the edge in the group of states, per cent. */
  public Interval share(WallGroup group) {
    return share(length(group), unmapped(), edge);
  }

  /** The longest unbroken run that is missing or separated. */
  public Interval longestDefect() {
    return Interval.between(longestRun(false), most(longestRun(true)));
  }

  /**
   * The run that is missing or separated from the middle of the toe back; 0 when none starts there.
   */
  public Interval defectFromToe() {
    return Interval.between(run(0, 0, false), most(run(0, 0, true)));
  }

  /** Per cent of the whole that is certainly so, to that which may be so too. */
  static Interval share(double certain, double unmapped, double whole) {
    if (!(whole > 0)) {
      return Interval.UNKNOWN;
    }
    return Interval.between(
        Math.min(100, 100 * certain / whole), Math.min(100, 100 * (certain + unmapped) / whole));
  }

  /** Without the edge there is no telling how far it may run. */
  private static double most(double run) {
    return Unknown.is(run) ? Double.POSITIVE_INFINITY : run;
  }

  /** Ends closer than this, in mm, are the same place. */
  static final double SAME = 1e-6;

  private double longestRun(boolean unmappedToo) {
    double longest = run(0, 0, unmappedToo);
    for (int i = 0; i < pieces.size(); i++) {
      longest = Math.max(longest, run(pieces.get(i).from(), i, unmappedToo));
      longest = Math.max(longest, run(pieces.get(i).to(), i + 1, unmappedToo));
    }
    return longest;
  }

  /** Length of the run from a place on, whose next piece is the one given. */
  private double run(double from, int next, boolean unmappedToo) {
    double end = from;
    for (int i = next; i < pieces.size(); i++) {
      MappedPiece piece = pieces.get(i);
      boolean gap = piece.from() - end > SAME && !unmappedToo;
      if (gap || !piece.group().defect()) {
        return (unmappedToo ? Math.max(end, piece.from()) : end) - from;
      }
      end = piece.to();
    }
    return (unmappedToo ? Math.max(end, edge) : end) - from;
  }
}
