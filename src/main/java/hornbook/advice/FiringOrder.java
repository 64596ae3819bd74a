package hornbook.advice;

import hornbook.rulebook.fact.Cited;
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
final class FiringOrder implements Comparator<Firing> {
  @Override
  public int compare(Firing one, Firing other) {
    int byRule = one.rule().compareTo(other.rule());
    return byRule != 0
        ? byRule
        : key(one.conclusion().because()).compareTo(key(other.conclusion().because()));
  }

  private static String key(List<Cited> because) {
    StringBuilder key = new StringBuilder();
    for (Cited fact : because) {
      key.append(key(fact)).append('\n');
    }
    return key.toString();
  }

  private static String key(Cited fact) {
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
