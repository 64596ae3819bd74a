package hornbook.foot.wall;

import hornbook.foot.number.EdgeInterval;
import java.util.ArrayList;
import java.util.List;

/** The windows for nails in the sound runs of one side, before cracks are thought of. */
final class SoundRuns {
  private SoundRuns() {}

  /**
   * Windows in order.
   *
   * @param across the other side, which tells whether a run that starts at the toe ends there
   * @param unmappedToo whether unmapped wall counts as sound and an unknown thickness as enough
   */
  static List<EdgeInterval> windows(
      SideSurvey side,
      SideSurvey across,
      NailingLimits limits,
      double rearmost,
      boolean unmappedToo) {
    List<MappedPiece> wall = unmappedToo ? filled(side) : side.pieces();
    List<EdgeInterval> windows = new ArrayList<>(wall.size());
    int i = 0;
    while (i < wall.size()) {
      int end = i;
      while (end < wall.size() && sound(wall.get(end)) && (end == i || touch(wall, end))) {
        end++;
      }
      if (end > i) {
        double start = wall.get(i).from();
        boolean endsThere = start > SideSurvey.SAME || !soundAtToe(across, unmappedToo);
        double first =
            Math.max(limits.toeClearance(), endsThere ? start + limits.endClearance() : 0);
        double last = Math.min(rearmost, wall.get(end - 1).to() - limits.endClearance());
        thickEnough(windows, wall.subList(i, end), first, last, limits, unmappedToo);
      }
      i = Math.max(end, i + 1);
    }
    return windows;
  }

  private static void thickEnough(
      List<EdgeInterval> windows,
      List<MappedPiece> run,
      double first,
      double last,
      NailingLimits limits,
      boolean unknownToo) {
    int i = 0;
    while (i < run.size()) {
      int end = i;
      while (end < run.size() && thick(run.get(end), limits, unknownToo)) {
        end++;
      }
      if (end > i) {
        double from = Math.max(first, run.get(i).from());
        double to = Math.min(last, run.get(end - 1).to());
        if (from <= to + SideSurvey.SAME) {
          windows.add(new EdgeInterval(from, Math.max(from, to)));
        }
      }
      i = Math.max(end, i + 1);
    }
  }

  private static boolean thick(MappedPiece piece, NailingLimits limits, boolean unknownToo) {
    Double thickness = piece.stretch() == null ? null : piece.stretch().thickness();
    return thickness == null ? unknownToo : thickness >= limits.leastThickness();
  }

  private static boolean soundAtToe(SideSurvey side, boolean unmappedToo) {
    List<MappedPiece> wall = side.pieces();
    if (wall.isEmpty() || wall.get(0).from() > SideSurvey.SAME) {
      return unmappedToo;
    }
    return sound(wall.get(0));
  }

  private static boolean sound(MappedPiece piece) {
    return piece.group() == WallGroup.SOUND;
  }

  private static boolean touch(List<MappedPiece> wall, int i) {
    return wall.get(i).from() - wall.get(i - 1).to() <= SideSurvey.SAME;
  }

  /** The pieces with the unmapped edge between and behind them filled in as sound. */
  private static List<MappedPiece> filled(SideSurvey side) {
    List<MappedPiece> all = new ArrayList<>(2 * side.pieces().size() + 1);
    double end = 0;
    for (MappedPiece piece : side.pieces()) {
      if (piece.from() - end > SideSurvey.SAME) {
        all.add(new MappedPiece(end, piece.from(), null, WallGroup.SOUND));
      }
      all.add(piece);
      end = piece.to();
    }
    if (side.edge() - end > SideSurvey.SAME) {
      all.add(new MappedPiece(end, side.edge(), null, WallGroup.SOUND));
    }
    return all;
  }
}
