package hornbook.advice.engine;

import hornbook.advice.FiredRule;
import hornbook.rulebook.fact.CitedFact;
import hornbook.rulebook.fact.Crack;
import hornbook.rulebook.fact.Finding;
import hornbook.rulebook.fact.Limit;
import hornbook.rulebook.fact.Reading;
import hornbook.rulebook.fact.Seen;
import hornbook.rulebook.fact.Stretch;
import java.util.Comparator;
import java.util.List;

/**
 * Puts firings in an order of their own: by rule, then by what they rest on. The records are not
 * compared by their own text, which a cold start takes thirty milliseconds to learn to write.
 */
final class FiringOrder implements Comparator<FiredRule> {
  @Override
  public int compare(FiredRule one, FiredRule other) {
    int byRule = one.rule().compareTo(other.rule());
    return byRule != 0
        ? byRule
        : key(one.conclusion().because()).compareTo(key(other.conclusion().because()));
  }

  private static String key(List<CitedFact> because) {
    StringBuilder key = new StringBuilder();
    for (CitedFact fact : because) {
      key.append(key(fact)).append('\n');
    }
    return key.toString();
  }

  private static String key(CitedFact fact) {
    if (fact instanceof Seen seen) {
      return seen.field() + " " + seen.word();
    }
    if (fact instanceof Reading reading) {
      return reading.what();
    }
    if (fact instanceof Crack crack) {
      return crack.field();
    }
    if (fact instanceof Stretch stretch) {
      return stretch.field();
    }
    return fact instanceof Limit limit
        ? limit.id()
        : ((Finding) fact).what() + " " + key(((Finding) fact).because());
  }
}
