package hornbook.report.drawing;

import hornbook.assessment.WallCrack;
import hornbook.assessment.word.CrackPlace;
import hornbook.assessment.word.CrackStart;
import hornbook.foot.GrowingOut;
import hornbook.foot.number.Unknown;
import hornbook.foot.shape.CoronaryBand;
import hornbook.foot.wall.MappedPiece;
import hornbook.foot.wall.SideSurvey;
import hornbook.report.words.HorseAndDay;
import hornbook.report.words.PlainWords;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * A defect of the wall or a crack, and when it has grown out.
 *
 * @param name as on the other drawings: the number of its stretch in the legend, or {@code crack 1}
 * @param where the part of the wall, in words
 * @param fill the pattern of its wedge
 * @param height of its top above the ground, mm
 * @param ground days until its top has grown down to the ground
 */
record Regrowth(String name, String where, Fill fill, double height, GrowingOut ground) {

  /** What can grow out, and a sentence on each of which that is not known. */
  record Found(List<Regrowth> known, List<String> unknown) {}

  /** The defects by the numbers of the legend, then the cracks. */
  static Found of(DrawnFoot subject) {
    Found found = new Found(new ArrayList<>(), new ArrayList<>());
    int number = 0;
    for (SideSurvey side : sides(subject)) {
      for (MappedPiece piece : side.pieces()) {
        number++;
        if (piece.group().defect()) {
          defect(number, piece, subject, found);
        }
      }
    }
    if (subject.foot().cracks() != null) {
      int crack = 0;
      for (WallCrack one : subject.foot().cracks()) {
        crack(++crack, one, subject, found);
      }
    }
    return found;
  }

  private static void defect(int number, MappedPiece piece, DrawnFoot subject, Found found) {
    Double height = piece.stretch().height();
    if (height == null) {
      found.unknown.add(
          "Stretch "
              + number
              + " is not drawn: its height was not measured, so when it has grown out is not"
              + " known.");
    } else if (height > 0) {
      String where = PlainWords.of(piece.stretch().side().word()) + " side";
      found.known.add(
          of(Integer.toString(number), where, WallFills.of(piece.group()), height, subject));
    }
  }

  /**
   * A crack from the coronary band has grown out when the wall it is in has been renewed: its top
   * is as high as that wall, as on the job sheet.
   */
  private static void crack(int number, WallCrack crack, DrawnFoot subject, Found found) {
    String name = "crack " + number;
    String unknown = "Crack " + number + " is not drawn: ";
    if (crack.place() == CrackPlace.BAR) {
      found.unknown.add(unknown + "it is in the bar.");
    } else if (crack.place() == null || crack.starts() == null) {
      found.unknown.add(unknown + "where it is or where it starts was not noted.");
    } else if (crack.starts() == CrackStart.GROUND) {
      found.unknown.add(
          unknown
              + "it starts at the ground and its length was not measured, so when it has grown out"
              + " is not known.");
    } else {
      double height = wall(crack.place(), subject);
      if (Unknown.is(height)) {
        found.unknown.add(unknown + "the height of the wall it is in is not known.");
      } else {
        found.known.add(of(name, where(crack), Fill.DOTS, height, subject));
      }
    }
  }

  private static String where(WallCrack crack) {
    String side =
        crack.side() == null || crack.place() == CrackPlace.TOE
            ? ""
            : PlainWords.of(crack.side().word()) + " ";
    return side + PlainWords.of(crack.place().word()) + ", from the coronary band";
  }

  /** The height of the wall in the middle of a part of it; {@code NaN} where it is not known. */
  private static double wall(CrackPlace place, DrawnFoot subject) {
    CoronaryBand band =
        CoronaryBand.of(subject.readings().measures(), subject.readings().outline());
    return switch (place) {
      case TOE -> band.toe();
      case HEEL -> band.heel();
      default ->
          band.known()
              ? band.above(
                  subject.readings().limits().nailing().regions().middle(place)
                      * band.outline().edgeLength())
              : Unknown.NUMBER;
    };
  }

  private static Regrowth of(
      String name, String where, Fill fill, double height, DrawnFoot subject) {
    GrowingOut out = GrowingOut.of(height, 0, subject.readings().limits().growth());
    return new Regrowth(name, where, fill, height, out);
  }

  /** The mapped sides, the inner first, as the legend numbers their stretches. */
  static List<SideSurvey> sides(DrawnFoot subject) {
    return subject.readings().wall() == null
        ? List.of()
        : List.of(subject.readings().wall().medial(), subject.readings().wall().lateral());
  }

  /** {@code 2, outer side, 26 mm high: grown out between 20 June 2026 ...}. */
  String told(DrawnFoot subject) {
    return name
        + ", "
        + where
        + ", "
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
