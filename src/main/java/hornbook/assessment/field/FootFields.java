package hornbook.assessment.field;

import static hornbook.assessment.field.FieldTable.amount;
import static hornbook.assessment.field.FieldTable.flag;
import static hornbook.assessment.field.FieldTable.group;
import static hornbook.assessment.field.FieldTable.text;
import static hornbook.assessment.field.FieldTable.whole;
import static hornbook.assessment.field.FieldTable.word;
import static hornbook.assessment.field.FieldTable.words;
import static hornbook.assessment.quantity.Unit.MM;

import hornbook.assessment.Care;
import hornbook.assessment.Foot;
import hornbook.assessment.Judged;
import hornbook.assessment.Limb;
import hornbook.assessment.word.Deformity;
import hornbook.assessment.word.Diagnosis;
import hornbook.assessment.word.Landing;
import hornbook.assessment.word.NailDrawn;
import hornbook.assessment.word.OldShoeWear;
import hornbook.assessment.word.Onset;
import hornbook.assessment.word.PasternLine;
import hornbook.assessment.word.PresentShoe;
import hornbook.assessment.word.Shoeing;
import hornbook.assessment.word.Stance;
import java.util.List;

/** The fields of one foot. */
final class FootFields {
  static final RecordShape SHAPE = new OfFoot();

  /**
   * What has been done to the foot so far; each is asked only where something known calls for it.
   */
  private static final List<Field> CARE =
      List.of(
          word(
                  "presentShoe",
                  PresentShoe.values(),
                  "present shoe",
                  "What kind of shoe is on now, before it comes off.")
              .asFixed(),
          flag("pad", "pad under the shoe", "Does a pad lie between the shoe and the foot?")
              .asFixed(),
          flag("studs", "studs in the shoe", "Are studs in the shoe now?").asFixed(),
          text("soreNail", "sore nail", "Which nail hurts, counted from the toe: third inside.")
              .asFixed(),
          word(
                  "nailDrawn",
                  NailDrawn.values(),
                  "sore nail drawn",
                  "How it came out: dry and clean, or wet (damp, grey or smelling). Blood and pus"
                      + " have fields of their own.")
              .asFixed(),
          whole(
                  "poulticedDays",
                  0,
                  60,
                  "days",
                  "days under a poultice",
                  "How many days the foot has been poulticed so far; 0 for none.")
              .asFixed(),
          whole(
                  "dryForDays",
                  0,
                  365,
                  "days",
                  "days the dressing has stayed dry",
                  "Days since pus or wet was last found on the dressing.")
              .asFixed(),
          whole(
                  "wallGoneDays",
                  0,
                  800,
                  "days",
                  "days since the wall was lost or cut",
                  "Since the piece broke away, or since it was cut out.")
              .asFixed(),
          amount(
              "hornSince",
              MM,
              0,
              150,
              8,
              "horn grown since then",
              "From the coronary band down to the top of the loss, or to the mark made that day."),
          words(
                  "vetJudged",
                  Judged.values(),
                  "judged by a vet",
                  "What a vet has looked at on this foot and has decided about.")
              .asFixed(),
          whole(
                  "vetSawDaysAgo",
                  0,
                  3650,
                  "days",
                  "days since a vet looked",
                  "Since a vet last looked at this foot.")
              .asFixed());

  static final List<Field> ALL =
      List.of(
          word(
                  "limb",
                  Limb.values(),
                  "limb",
                  "Which foot this is, seen from the saddle. It has to be named.")
              .asFixed()
              .asRequired(),
          whole(
              "lameness",
              0,
              5,
              "grade",
              "lameness grade",
              "0 none, 1 hard to see and comes and goes, 2 hard to see but there on a circle, slope"
                  + " or hard ground, 3 there at every trot, 4 plain at walk, 5 bears little or no"
                  + " weight."),
          word(
              "onset",
              Onset.values(),
              "onset of lameness",
              "Did it come on within a day or so, or over weeks? None if it is not lame."),
          flag(
              "lameSinceShod",
              "lame since shoeing",
              "Was it sound before the last shoeing and lame since?"),
          whole(
              "lameForDays",
              0,
              9999,
              "days",
              "days lame",
              "Since it was first seen lame on this foot."),
          word("shoeing", Shoeing.values(), "shoeing", "What is on the foot now.").asFixed(),
          flag(
                  "lostShoe",
                  "shoe lost",
                  "Has it lost the shoe it was last given? No for a foot that goes bare by choice.")
              .asFixed(),
          whole(
                  "gluedCycles",
                  0,
                  200,
                  "",
                  "glued cycles",
                  "How many shoeings in a row it has been glued, this one not counted.")
              .asFixed(),
          whole(
                  "wrappedDaysAgo",
                  0,
                  3650,
                  "days",
                  "days since wrapping",
                  "Since tape was put round the foot, if it is still on.")
              .asFixed(),
          word(
              "stance",
              Stance.values(),
              "stance",
              "From in front (from behind for a hind): the horse square, weight on all four."),
          word(
              "pasternLine",
              PasternLine.values(),
              "line of the pastern",
              "Follow the middle of the pastern down to the foot: where does it come out?"),
          word(
              "landing",
              Landing.values(),
              "landing",
              "Walk it away and back on level ground: which part touches first?"),
          word(
              "oldShoeWear",
              OldShoeWear.values(),
              "wear of the old shoe",
              "Where the old shoe is thinnest; unknown if it is lost."),
          word(
              "deformity",
              Deformity.values(),
              "deformity of the limb",
              "Drawn up by tendon (flexural) or bent to one side (angular), mostly in foals."),
          flag("brushing", "brushing", "Does this foot strike the other limb, or bear the marks?"),
          word(
                  "diagnosis",
                  Diagnosis.values(),
                  "diagnosis of the vet",
                  "What a vet has found in this foot and said so; none if no vet has.")
              .asFixed(),
          group(
              "measures",
              MeasureFields.SHAPE,
              "measures",
              "Foot clean and dry; lengths by tape or calliper, angles by gauge.",
              MeasureFields.ALL),
          new Field(
              "wall",
              new FieldRows(WallFields.STRETCH_SHAPE, WallFields.STRETCH, 0, 60, false),
              "map of the wall",
              "The ground edge in stretches, each measured back along the edge from mid-toe.",
              false),
          new Field(
              "cracks",
              new FieldRows(WallFields.CRACK_SHAPE, WallFields.CRACK, 0, 40, true),
              "cracks",
              "Every crack in the wall or bars, once the foot is clean.",
              false),
          group(
              "signs",
              SignFields.SHAPE,
              "signs",
              "Seen and felt, each compared with the other foot of the pair.",
              SignFields.ALL),
          group(
              "care",
              new OfCare(),
              "care so far",
              "What has been done to this foot already, where it needs first aid.",
              CARE));

  private FootFields() {}

  private static final class OfFoot extends RecordShape {
    @Override
    Class<Foot> type() {
      return Foot.class;
    }

    @Override
    public Object[] take(Object record) {
      Foot r = (Foot) record;
      return new Object[] {
        r.limb(),
        r.lameness(),
        r.onset(),
        r.lameSinceShod(),
        r.lameForDays(),
        r.shoeing(),
        r.lostShoe(),
        r.gluedCycles(),
        r.wrappedDaysAgo(),
        r.stance(),
        r.pasternLine(),
        r.landing(),
        r.oldShoeWear(),
        r.deformity(),
        r.brushing(),
        r.diagnosis(),
        r.measures(),
        r.wall(),
        r.cracks(),
        r.signs(),
        r.care()
      };
    }

    @Override
    public Object build(Components c) {
      return new Foot(
          c.next(), c.next(), c.next(), c.next(), c.next(), c.next(), c.next(), c.next(), c.next(),
          c.next(), c.next(), c.next(), c.next(), c.next(), c.next(), c.next(), c.next(), c.next(),
          c.next(), c.next(), c.next());
    }
  }

  private static final class OfCare extends RecordShape {
    @Override
    Class<Care> type() {
      return Care.class;
    }

    @Override
    public Object[] take(Object record) {
      Care r = (Care) record;
      return new Object[] {
        r.presentShoe(),
        r.pad(),
        r.studs(),
        r.soreNail(),
        r.nailDrawn(),
        r.poulticedDays(),
        r.dryForDays(),
        r.wallGoneDays(),
        r.hornSince(),
        r.vetJudged(),
        r.vetSawDaysAgo()
      };
    }

    @Override
    public Object build(Components c) {
      return new Care(
          c.next(), c.next(), c.next(), c.next(), c.next(), c.next(), c.next(), c.next(), c.next(),
          c.next(), c.next());
    }
  }
}
