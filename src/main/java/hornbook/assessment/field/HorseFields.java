package hornbook.assessment.field;

import static hornbook.assessment.field.FieldTable.amount;
import static hornbook.assessment.field.FieldTable.flag;
import static hornbook.assessment.field.FieldTable.text;
import static hornbook.assessment.field.FieldTable.whole;
import static hornbook.assessment.field.FieldTable.word;
import static hornbook.assessment.quantity.Unit.CELSIUS;
import static hornbook.assessment.quantity.Unit.CM;
import static hornbook.assessment.quantity.Unit.KILOGRAM;

import hornbook.assessment.Horse;
import hornbook.assessment.Species;
import hornbook.assessment.TetanusCover;
import hornbook.assessment.Work;
import java.util.List;

/** The fields of the horse. */
final class HorseFields {
  static final RecordShape SHAPE = new OfHorse();
  static final List<Field> ALL =
      List.of(
          text("name", "name", "As the owner calls it, or as the passport has it.").asFixed(),
          whole(
                  "ageYears",
                  0,
                  65,
                  "years",
                  "age in years",
                  "From the passport, or judged by the teeth.")
              .asFixed(),
          whole(
                  "ageDays",
                  0,
                  24_000,
                  "days",
                  "age in days",
                  "For a foal or yearling: days since birth.")
              .asFixed(),
          amount(
              "weight",
              KILOGRAM,
              5,
              1600,
              470,
              "body weight",
              "From a weighbridge; without one leave it out and give girth and body length."),
          amount(
              "girth",
              CM,
              25,
              350,
              184,
              "heart girth",
              "Tape round the chest close behind the elbow, read as the horse breathes out."),
          amount(
              "bodyLength",
              CM,
              25,
              350,
              160,
              "body length",
              "From the point of the shoulder straight back to the point of the buttock."),
          word("work", Work.values(), "work", "What the horse does most weeks of this season.")
              .asFixed(),
          word(
                  "tetanusCover",
                  TetanusCover.values(),
                  "tetanus cover",
                  "From the vaccination record: in date or run out? No record seen is unknown.")
              .asFixed(),
          amount(
              "bodyTemperature",
              CELSIUS,
              28,
              45,
              38,
              "body temperature",
              "By thermometer in the rectum, at rest; ask the owner if it was taken today."),
          whole(
              "bodyCondition",
              1,
              9,
              "",
              "body condition",
              "From 1, skin and bone, to 9, bulging with fat; 5 when the ribs are felt and not seen."),
          whole(
              "laminitisGrade",
              0,
              4,
              "grade",
              "laminitis grade (Obel)",
              "0 none, 1 shifts weight and trots short, 2 stilted at walk but a foot can be lifted,"
                  + " 3 hardly walks or lifts a foot, 4 moves only if forced."),
          flag(
              "unwillingToMove",
              "unwilling to move",
              "Asked to walk a few steps on the level, does it refuse or have to be pressed?"),
          flag(
              "shiftsWeight",
              "shifts its weight",
              "Watch it stand for a minute: does it keep easing one foot and then the other?"),
          flag(
              "colicSigns",
              "signs of colic",
              "Pawing, looking at the flank, lying down and getting up, rolling."),
          flag("unwell", "unwell", "Dull, off its feed, sweating at rest or breathing hard."),
          word("species", Species.values(), "kind of animal", "Horse, pony, donkey or mule.")
              .asFixed(),
          whole(
                  "worksInDays",
                  0,
                  365,
                  "days",
                  "days until it has to work again",
                  "Days until it has to compete, race or work hard; 0 for today.")
              .asFixed());

  private HorseFields() {}

  private static final class OfHorse extends RecordShape {
    @Override
    Class<Horse> type() {
      return Horse.class;
    }

    @Override
    public Object[] take(Object record) {
      Horse r = (Horse) record;
      return new Object[] {
        r.name(),
        r.ageYears(),
        r.ageDays(),
        r.weight(),
        r.girth(),
        r.bodyLength(),
        r.work(),
        r.tetanusCover(),
        r.bodyTemperature(),
        r.bodyCondition(),
        r.laminitisGrade(),
        r.unwillingToMove(),
        r.shiftsWeight(),
        r.colicSigns(),
        r.unwell(),
        r.species(),
        r.worksInDays()
      };
    }

    @Override
    public Object build(Components c) {
      return new Horse(
          c.next(), c.next(), c.next(), c.next(), c.next(), c.next(), c.next(), c.next(), c.next(),
          c.next(), c.next(), c.next(), c.next(), c.next(), c.next(), c.next(), c.next());
    }
  }
}
