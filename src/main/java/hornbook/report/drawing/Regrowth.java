package hornbook.report.drawing;

import hornbook.foot.GrowingOut;
import hornbook.foot.wall.MappedPiece;
import hornbook.foot.wall.SideSurvey;
import hornbook.report.words.HorseAndDay;
import hornbook.report.words.PlainWords;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * A defect of the wall and when it has grown out.
 *
 * @param number of its stretch in the legend of the wall
 * @param height of its top above the ground, mm
 * @param ground days until its top has grown down to the ground
 */
record Regrowth(int number, MappedPiece piece, double height, GrowingOut ground) {

  /** The defects with a height, by the numbers of the legend. */
  static List<Regrowth> of(DrawnFoot subject) {
    List<Regrowth> all = new ArrayList<>();
    int number = 0;
    for (SideSurvey side : sides(subject)) {
      for (MappedPiece piece : side.pieces()) {
        number++;
        Double height = piece.stretch().height();
        if (piece.group().defect() && height != null) {
          GrowingOut out = GrowingOut.of(height, 0, subject.readings().limits().growth());
          all.add(new Regrowth(number, piece, height, out));
        }
      }
    }
    return all;
  }

  /** The mapped sides, the inner first, as the legend numbers their stretches. */
  static List<SideSurvey> sides(DrawnFoot subject) {
    return subject.readings().wall() == null
        ? List.of()
        : List.of(subject.readings().wall().medial(), subject.readings().wall().lateral());
  }

  /** {@code 2, outer side, 26 mm high: grown out 20 June to 22 October 2026}. */
  String told(DrawnFoot subject) {
    return number
        + ", "
        + PlainWords.of(piece.stretch().side().word())
        + " side, "
        + subject.mm(height)
        + " high: grown out "
        + between(subject.date());
  }

  private String between(LocalDate date) {
    if (date == null) {
      return "in " + days(ground.fast()) + " to " + days(ground.slow()) + " days";
    }
    return "between "
        + HorseAndDay.spoken(GrowingOut.date(date, ground.fast()))
        + " (fast growth) and "
        + HorseAndDay.spoken(GrowingOut.date(date, ground.slow()))
        + " (slow growth)";
  }

  private static long days(double days) {
    return (long) Math.ceil(days);
  }
}
