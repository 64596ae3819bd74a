package hornbook.study.generate;

import hornbook.assessment.Assessment;
import hornbook.assessment.Measures;
import hornbook.assessment.Side;
import hornbook.assessment.WallCrack;
import hornbook.assessment.WallState;
import hornbook.assessment.WallStretch;
import hornbook.assessment.read.AssessmentEdit;
import hornbook.assessment.word.CrackDepth;
import hornbook.assessment.word.CrackPlace;
import hornbook.assessment.word.CrackRuns;
import hornbook.assessment.word.CrackStart;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.rng.UniformRandomProvider;

/** Draws the wall of a foot, its stretches end to end, and its cracks. */
final class RandomWall {
  /** Either side of any foot drawn has this much edge at the least, in mm. */
  private static final int EDGE = 120;

  private RandomWall() {}

  static Assessment on(Assessment foot, UniformRandomProvider random) {
    Assessment drawn = measured(foot);
    for (int index = 0; index < foot.feet().size(); index++) {
      String path = "feet[" + index + "].";
      if (random.nextInt(3) > 0) {
        drawn = AssessmentEdit.of(path + "wall").with(drawn, wall(random));
      }
      if (random.nextBoolean()) {
        drawn = AssessmentEdit.of(path + "cracks").with(drawn, cracks(random));
      }
    }
    return drawn;
  }

  /** Gives up a measure that contradicts another, or leaves less edge than the wall needs. */
  private static Assessment measured(Assessment foot) {
    Assessment kept = foot;
    for (int index = 0; index < foot.feet().size(); index++) {
      String path = "feet[" + index + "].measures.";
      Measures measures = foot.feet().get(index).measures();
      Double length = measures.bearingLength();
      boolean beyond =
          length != null && measures.toeToWidest() != null && measures.toeToWidest() > length;
      if (beyond) {
        kept = AssessmentEdit.of(path + "toeToWidest").with(kept, null);
      }
      if (length != null && length < EDGE) {
        kept = AssessmentEdit.of(path + "bearingLength").with(kept, (double) EDGE);
      }
    }
    return kept;
  }

  private static List<WallStretch> wall(UniformRandomProvider random) {
    List<WallStretch> wall = new ArrayList<>();
    for (Side side : Side.values()) {
      double from = 0;
      while (from < EDGE && random.nextInt(5) > 0) {
        double to = Math.min(EDGE, from + 20 + random.nextInt(100));
        wall.add(stretch(side, from, to, random));
        from = to;
      }
    }
    return wall.isEmpty() ? null : List.copyOf(wall);
  }

  private static WallStretch stretch(
      Side side, double from, double to, UniformRandomProvider random) {
    boolean sound = random.nextInt(5) < 2;
    WallState state =
        sound ? WallState.SOUND : WallState.values()[random.nextInt(WallState.values().length)];
    Double height = random.nextBoolean() ? 5.0 + random.nextInt(50) : null;
    Double thickness = random.nextBoolean() ? 4.0 + random.nextInt(9) : null;
    return new WallStretch(
        side,
        from,
        to,
        state,
        height,
        thickness,
        null,
        maybe(random),
        maybe(random),
        maybe(random));
  }

  private static List<WallCrack> cracks(UniformRandomProvider random) {
    List<WallCrack> cracks = new ArrayList<>();
    for (int left = random.nextInt(3); left > 0; left--) {
      cracks.add(
          new WallCrack(
              CrackPlace.values()[random.nextInt(CrackPlace.values().length)],
              Side.values()[random.nextInt(Side.values().length)],
              CrackStart.values()[random.nextInt(CrackStart.values().length)],
              CrackDepth.values()[random.nextInt(CrackDepth.values().length)],
              maybe(random),
              maybe(random),
              maybe(random),
              CrackRuns.values()[random.nextInt(CrackRuns.values().length)]));
    }
    return List.copyOf(cracks);
  }

  private static Boolean maybe(UniformRandomProvider random) {
    int drawn = random.nextInt(3);
    return drawn == 2 ? null : Boolean.valueOf(drawn == 1);
  }
}
