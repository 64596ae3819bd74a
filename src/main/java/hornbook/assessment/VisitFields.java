package hornbook.assessment;

import static hornbook.assessment.Entry.amount;
import static hornbook.assessment.Entry.whole;
import static hornbook.assessment.Entry.word;
import static hornbook.assessment.Entry.words;

import java.util.List;

/** The fields of the visit. */
final class VisitFields {
  static final List<Field> ALL =
      List.of(
          new Field(
              "date",
              new Day(),
              "date of the visit",
              "The day the foot was looked at; growth and the next visit count from it.",
              false),
          amount(
              "airTemperature",
              Unit.CELSIUS,
              -50,
              55,
              "air temperature",
              "Where the work is done, in the shade; glue and tape set by it."),
          word(
              "workplace",
              Workplace.class,
              "place of work",
              "The ground the horse stands on while you work, and whether it is dry."),
          whole("shodDaysAgo", 0, 3650, "days since shoeing", "Days since the last shoeing."),
          word(
              "vet",
              VetRole.class,
              "the vet's part",
              "Has a vet been told of this foot, or does a vet direct the work on it?"),
          word(
              "handling",
              Handling.class,
              "handling",
              "How it stands for you today, with the foot up as well as down."),
          words(
              "askedFor",
              Request.class,
              "asked of you",
              "Anything the owner asks that is a vet's work, or a judgement that is a vet's."));

  private VisitFields() {}
}
