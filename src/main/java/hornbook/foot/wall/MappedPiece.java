package hornbook.foot.wall;

import hornbook.assessment.WallStretch;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * A piece of one side's edge and the stretch that describes it; from and to in mm along the edge
 * from the middle of the toe.
 */
public record MappedPiece(double from, double to, WallStretch stretch, WallGroup group) {

  public double length() {
    return to - from;
  }

  /** How much of the piece lies behind a place. */
  double behind(double place) {
    return Math.max(0, to - Math.max(from, place));
  }

  /**
   * The stretches as pieces in order that do not overlap. Where two claim the same edge the worse
   * state counts. A stretch without ends or state maps nothing.
   */
  static List<MappedPiece> inOrder(List<WallStretch> stretches) {
    List<MappedPiece> claims = new ArrayList<>(stretches.size());
    double[] ends = new double[2 * stretches.size()];
    for (WallStretch s : stretches) {
      if (s.from() != null && s.to() != null && s.state() != null) {
        double from = Math.max(0, s.from());
        if (from < s.to() && Double.isFinite(s.to())) {
          ends[2 * claims.size()] = from;
          ends[2 * claims.size() + 1] = s.to();
          claims.add(new MappedPiece(from, s.to(), s, WallGroup.of(s.state())));
        }
      }
    }
    int count = 2 * claims.size();
    Arrays.sort(ends, 0, count);
    List<MappedPiece> pieces = new ArrayList<>(claims.size());
    for (int i = 1; i < count; i++) {
      if (ends[i - 1] < ends[i]) {
        append(pieces, worst(claims, ends[i - 1], ends[i]), ends[i - 1], ends[i]);
      }
    }
    return pieces;
  }

  private static void append(List<MappedPiece> pieces, MappedPiece claim, double from, double to) {
    if (claim == null) {
      return;
    }
    int last = pieces.size() - 1;
    if (last >= 0 && pieces.get(last).to == from && pieces.get(last).stretch == claim.stretch) {
      pieces.set(last, new MappedPiece(pieces.get(last).from, to, claim.stretch, claim.group));
    } else {
      pieces.add(new MappedPiece(from, to, claim.stretch, claim.group));
    }
  }

  private static MappedPiece worst(List<MappedPiece> claims, double from, double to) {
    MappedPiece worst = null;
    for (int i = 0; i < claims.size(); i++) {
      MappedPiece claim = claims.get(i);
      boolean covers = claim.from <= from && claim.to >= to;
      if (covers && (worst == null || claim.group.compareTo(worst.group) > 0)) {
        worst = claim;
      }
    }
    return worst;
  }
}
