package hornbook.report.words;

import hornbook.rulebook.Subjects;
import hornbook.rulebook.fact.CitedFact;
import hornbook.rulebook.fact.Crack;
import hornbook.rulebook.fact.Finding;
import hornbook.rulebook.fact.Limit;
import hornbook.rulebook.fact.Reading;
import hornbook.rulebook.fact.Seen;
import hornbook.rulebook.fact.Stretch;

/** What was observed, with its name: {@code nail sites, weaker branch: 1}. */
public final class ObservedText {
  private final Phrases phrases;

  public ObservedText(Phrases phrases) {
    this.phrases = phrases;
  }

  /** The name of what was looked at. */
  static String what(CitedFact fact) {
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

  public String line(CitedFact fact) {
    boolean itself = fact instanceof Crack || fact instanceof Stretch || fact instanceof Finding;
    return itself ? phrases.of(fact) : what(fact) + ": " + phrases.of(fact);
  }
}
