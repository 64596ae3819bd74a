package hornbook.report;

import hornbook.rulebook.Subjects;
import hornbook.rulebook.fact.Cited;
import hornbook.rulebook.fact.Crack;
import hornbook.rulebook.fact.Finding;
import hornbook.rulebook.fact.Limit;
import hornbook.rulebook.fact.Reading;
import hornbook.rulebook.fact.Seen;
import hornbook.rulebook.fact.Stretch;

/** What was observed, with its name: {@code nail sites, weaker branch: 1}. */
final class Observed {
  private final Phrases phrases;

  Observed(Phrases phrases) {
    this.phrases = phrases;
  }

  /** The name of what was looked at. */
  static String what(Cited fact) {
    if (fact instanceof Reading reading) {
      return Subjects.label(reading.what());
    }
    if (fact instanceof Seen seen) {
      return Subjects.label(seen.what());
    }
    if (fact instanceof Limit limit) {
      return limit.label();
    }
    if (fact instanceof Crack) {
      return "crack";
    }
    return fact instanceof Stretch ? "wall" : "found";
  }

  String line(Cited fact) {
    boolean itself = fact instanceof Crack || fact instanceof Stretch || fact instanceof Finding;
    return itself ? phrases.of(fact) : what(fact) + ": " + phrases.of(fact);
  }
}
