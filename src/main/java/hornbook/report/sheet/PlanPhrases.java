package hornbook.report.sheet;

import hornbook.advice.Statement;
import hornbook.assessment.quantity.Units;
import hornbook.plan.figure.Figure;
import hornbook.plan.figure.Placeholder;
import hornbook.plan.sheet.SheetLine;
import hornbook.report.advice.PageHead;
import hornbook.report.words.Numbers;
import hornbook.report.words.Phrases;
import hornbook.report.words.PlainWords;
import hornbook.report.words.Sentence;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.fact.Basis;
import hornbook.rulebook.fact.Limit;
import java.util.Map;

/** Puts the sentences and numbers of a job sheet into plain words, in given units. */
public final class PlanPhrases {
  private static final double MINUTES_IN_AN_HOUR = 60;
  private static final double SPOKEN_AS_HOURS = 180;
  private static final double SHORT = 10;

  private final Phrases phrases;
  private final PlanAmounts amounts;

  PlanPhrases(Rulebook book, Units units) {
    this.phrases = new Phrases(book, units);
    this.amounts = new PlanAmounts(units);
  }

  Phrases phrases() {
    return phrases;
  }

  PlanAmounts amounts() {
    return amounts;
  }

  /** The sentence; where its numbers rest on no published work, their ground at its end. */
  String grounded(SheetLine line) {
    Basis weakest = Basis.PUBLISHED;
    for (Figure figure : line.figures()) {
      weakest = figure.basis() == null ? weakest : weakest.weaker(figure.basis());
    }
    boolean told = weakest == Basis.PUBLISHED || weakest == Basis.DERIVED;
    String tag = told ? "" : " (" + weakest.word() + ")";
    return says(line) + tag;
  }

  /** The sentence with its holes filled. */
  String says(SheetLine line) {
    return filled(line.instruction().says(), line.holes());
  }

  String says(Statement says) {
    return phrases.says(says);
  }

  /** A formula with the numbers in it, or an empty text for what is not reckoned. */
  String formula(Figure figure) {
    return figure.reckoned() ? filled(figure.formula(), figure.parts()) : "";
  }

  private String filled(String template, Map<String, ? extends Placeholder> holes) {
    Sentence sentence = new Sentence();
    int from = 0;
    for (int hole = template.indexOf('{'); hole >= 0; hole = template.indexOf('{', from)) {
      int end = template.indexOf('}', hole);
      sentence.literal(template.substring(from, hole));
      sentence.fact(of(holes.get(template.substring(hole + 1, end))), false);
      from = end + 1;
    }
    sentence.literal(template.substring(from));
    return sentence.text();
  }

  String of(Placeholder hole) {
    if (hole instanceof Figure figure) {
      return of(figure);
    }
    if (hole instanceof Placeholder.Place place) {
      return PlainWords.of(place.side().word())
          + " "
          + phrases.amounts().span(place.from(), place.to(), "mm");
    }
    if (hole instanceof Placeholder.On on) {
      return PageHead.spoken(on.day());
    }
    return PlainWords.of(((Placeholder.Word) hole).text());
  }

  /** A number with its unit. */
  String of(Figure figure) {
    if (!figure.known()) {
      return "not measured";
    }
    if (figure.unit().equals("minutes")) {
      return minutes(figure.low(), figure.high());
    }
    if (figure.limit() != null && figure.unit().equals(figure.limit().unit())) {
      return of(figure.limit());
    }
    return amounts.text(figure.low(), figure.high(), figure.unit());
  }

  /** The value of a limit with its unit; times in the words of the clock. */
  String of(Limit limit) {
    return limit.unit().equals("minutes")
        ? minutes(limit.value(), limit.value())
        : phrases.of(limit);
  }

  /** {@code 4 to 6 minutes}, {@code 24 hours}. */
  public static String minutes(double low, double high) {
    boolean hours = high >= SPOKEN_AS_HOURS;
    double unit = hours ? MINUTES_IN_AN_HOUR : 1;
    String to = number(high / unit);
    String from = number(low / unit);
    String word = hours ? " hours" : to.equals("1") ? " minute" : " minutes";
    if (low == 0) {
      return "up to " + to + word;
    }
    return (from.equals(to) ? to : from + " to " + to) + word;
  }

  private static String number(double value) {
    return Numbers.rounded(value, value < SHORT ? 1 : 0);
  }
}
