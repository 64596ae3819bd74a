package hornbook.assessment.field;

import static hornbook.assessment.field.FieldTable.amount;
import static hornbook.assessment.field.FieldTable.whole;
import static hornbook.assessment.field.FieldTable.word;
import static hornbook.assessment.field.FieldTable.words;

import hornbook.assessment.Handling;
import hornbook.assessment.Request;
import hornbook.assessment.VetRole;
import hornbook.assessment.Visit;
import hornbook.assessment.Workplace;
import hornbook.assessment.quantity.Unit;
import java.util.List;

/** The fields of the visit. */
final class VisitFields {
  static final RecordShape SHAPE = new OfVisit();
  static final List<Field> ALL =
      List.of(
          new Field(
                  "date",
                  new Day(),
                  "date of the visit",
                  "The day the foot was looked at; growth and the next visit count from it.",
                  false)
              .asFixed(),
          amount(
              "airTemperature",
              Unit.CELSIUS,
              -50,
              55,
              11,
              "air temperature",
              "In the shade where the work is done. Adhesive and tape set slower in the cold."),
          word(
              "workplace",
              Workplace.values(),
              "place of work",
              "The ground the horse stands on while you work, and whether it is dry."),
          whole(
                  "shodDaysAgo",
                  0,
                  3650,
                  "days",
                  "days since shoeing",
                  "Since shoes were last fitted or reset; 0 is today.")
              .asFixed(),
          word(
                  "vet",
                  VetRole.values(),
                  "the vet's part",
                  "Does a vet know about this foot, or does a vet direct the work on it?")
              .asFixed(),
          word(
              "handling",
              Handling.values(),
              "handling",
              "How the horse stands for you today, with the foot up as well as down."),
          words(
                  "askedFor",
                  Request.values(),
                  "asked of you",
                  "Anything the owner asks that is a vet's work, or a judgement that is a vet's.")
              .asFixed());

  private VisitFields() {}

  private static final class OfVisit extends RecordShape {
    @Override
    Class<Visit> type() {
      return Visit.class;
    }

    @Override
    public Object[] take(Object record) {
      Visit r = (Visit) record;
      return new Object[] {
        r.date(),
        r.airTemperature(),
        r.workplace(),
        r.shodDaysAgo(),
        r.vet(),
        r.handling(),
        r.askedFor()
      };
    }

    @Override
    public Object build(Components c) {
      return new Visit(c.next(), c.next(), c.next(), c.next(), c.next(), c.next(), c.next());
    }
  }
}
