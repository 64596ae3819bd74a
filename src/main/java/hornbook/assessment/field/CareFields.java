package hornbook.assessment.field;

import static hornbook.assessment.field.FieldTable.text;
import static hornbook.assessment.field.FieldTable.whole;
import static hornbook.assessment.field.FieldTable.word;

import hornbook.assessment.Care;
import hornbook.assessment.word.NailDrawn;
import java.util.List;

/** What has been done to one foot so far. Each is asked only where something known calls for it. */
final class CareFields {
  static final RecordShape SHAPE = new OfCare();
  static final List<Field> ALL =
      List.of(
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
              .asFixed());

  private CareFields() {}

  private static final class OfCare extends RecordShape {
    @Override
    Class<Care> type() {
      return Care.class;
    }

    @Override
    public Object[] take(Object record) {
      Care r = (Care) record;
      return new Object[] {r.soreNail(), r.nailDrawn(), r.poulticedDays(), r.dryForDays()};
    }

    @Override
    public Object build(Components c) {
      return new Care(c.next(), c.next(), c.next(), c.next());
    }
  }
}
