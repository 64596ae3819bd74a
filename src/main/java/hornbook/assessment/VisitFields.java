package hornbook.assessment;

import static hornbook.assessment.Entry.amount;
import static hornbook.assessment.Entry.whole;
import static hornbook.assessment.Entry.word;
import static hornbook.assessment.Entry.words;

import java.util.List;

/** The fields of the visit. */
final class VisitFields {
  static final Shape SHAPE = new OfVisit();
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
              "Where the work is done, in the shade; glue and tape set by it."),
          word(
              "workplace",
              Workplace.values(),
              "place of work",
              "The ground the horse stands on while you work, and whether it is dry."),
          whole(
                  "shodDaysAgo",
                  0,
                  3650,
                  "days since shoeing",
                  "Since shoes were last fitted or reset; 0 is today.")
              .asFixed(),
          word(
                  "vet",
                  VetRole.values(),
                  "the vet's part",
                  "Has a vet been told of this foot, or does a vet direct the work on it?")
              .asFixed(),
          word(
              "handling",
              Handling.values(),
              "handling",
              "How it stands for you today, with the foot up as well as down."),
          words(
                  "askedFor",
                  Request.values(),
                  "asked of you",
                  "Anything the owner asks that is a vet's work, or a judgement that is a vet's.")
              .asFixed());

  private VisitFields() {}

  private static final class OfVisit extends Shape {
    @Override
    Class<Visit> type() {
      return Visit.class;
    }

    @Override
    Object[] take(Object record) {
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
    Object build(Components c) {
      return new Visit(c.next(), c.next(), c.next(), c.next(), c.next(), c.next(), c.next());
    }
  }
}
