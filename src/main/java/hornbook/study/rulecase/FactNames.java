package hornbook.study.rulecase;

import hornbook.rulebook.Rulebook;
import hornbook.rulebook.Subjects;
import hornbook.rulebook.fact.CitedFact;
import hornbook.rulebook.fact.Crack;
import hornbook.rulebook.fact.Finding;
import hornbook.rulebook.fact.Limit;
import hornbook.rulebook.fact.Reading;
import hornbook.rulebook.fact.Seen;
import hornbook.rulebook.fact.Stretch;
import java.math.BigDecimal;
import java.util.Collection;
import java.util.stream.Collectors;

/** Facts named for contributors, by what they are called in the files. */
public final class FactNames {
  private FactNames() {}

  public static String words(Collection<CitedFact> facts, Rulebook book) {
    return facts.stream()
        .map(fact -> words(fact, book))
        .sorted()
        .collect(Collectors.joining(" and "));
  }

  private static String words(CitedFact fact, Rulebook book) {
    if (fact instanceof Reading reading) {
      String unit = Subjects.unit(reading.what());
      String span = number(reading.low());
      span += reading.exact() ? "" : " to " + number(reading.high());
      return (Subjects.label(reading.what()) + " " + span + " " + unit).strip();
    }
    if (fact instanceof Seen seen) {
      return Subjects.label(seen.what()) + " " + seen.word();
    }
    if (fact instanceof Finding finding) {
      return "the finding " + book.findings().get(finding.what()).label();
    }
    if (fact instanceof Crack crack) {
      return "a crack at the " + crack.place();
    }
    if (fact instanceof Stretch stretch) {
      return "a stretch of wall " + stretch.state();
    }
    return ((Limit) fact).id();
  }

  static String number(double value) {
    return Double.isInfinite(value)
        ? "more"
        : BigDecimal.valueOf(value).stripTrailingZeros().toPlainString();
  }
}
