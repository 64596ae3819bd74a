package hornbook.report.advice;

import hornbook.advice.Advice;
import hornbook.advice.FootAdvice;
import hornbook.advice.MeasureGiven;
import hornbook.assessment.Horse;
import hornbook.assessment.Visit;
import hornbook.report.words.Amounts;
import hornbook.report.words.HorseAndDay;
import hornbook.report.words.Phrases;
import hornbook.report.words.PlainWords;
import hornbook.report.words.Sentence;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/** The head of a page: the horse, the visit, and the line that stands on every page. */
public final class PageHead {
  public static final String SAFETY =
      "Decision support, not a diagnosis; local law and licensed practice decide; a horse in pain"
          + " is the vet's; mind chemicals, dust, fire and kicks.";

  private PageHead() {}

  /** Which rule base the advice was made with. */
  public static String rulebook(Advice advice) {
    return "Rule base " + advice.rulebook().version() + ", " + advice.rulebook().digest() + ".";
  }

  /** {@code Tansy, 14 March 2026}. */
  public static String title(Advice advice) {
    return HorseAndDay.of(advice);
  }

  /** Age, weight, work and the visit, as far as they are known. */
  static String facts(Advice advice, Phrases phrases) {
    Horse horse = advice.assessment().horse();
    Visit visit = advice.assessment().visit();
    Amounts amounts = phrases.amounts();
    List<String> facts = new ArrayList<>();
    if (horse.ageDays() != null) {
      facts.add(amounts.text(horse.ageDays(), "days") + " old");
    } else if (horse.ageYears() != null) {
      facts.add(amounts.text(horse.ageYears(), "years") + " old");
    }
    weight(advice, phrases, facts);
    if (horse.work() != null) {
      facts.add("work: " + PlainWords.of(horse.work().word()));
    }
    if (visit.shodDaysAgo() != null) {
      facts.add("last done " + amounts.text(visit.shodDaysAgo(), "days") + " ago");
    }
    if (visit.vet() != null) {
      facts.add(
          switch (visit.vet()) {
            case NONE -> "no vet informed";
            case INFORMED -> "vet informed";
            case DIRECTING -> "a vet directs";
          });
    }
    return Sentence.capital(String.join("; ", facts));
  }

  /** The body weight among the numbers of a foot, or null. */
  static MeasureGiven weight(Advice advice) {
    for (FootAdvice foot : advice.feet()) {
      for (MeasureGiven measure : foot.measures()) {
        if (measure.reading().what().equals("body-weight")) {
          return measure;
        }
      }
    }
    return null;
  }

  private static void weight(Advice advice, Phrases phrases, List<String> facts) {
    MeasureGiven weight = weight(advice);
    if (weight != null) {
      boolean weighed = advice.assessment().horse().weight() != null;
      facts.add(phrases.of(weight.reading()) + (weighed ? "" : ", estimated"));
    }
  }

  public static String spoken(LocalDate date) {
    return HorseAndDay.spoken(date);
  }
}
