package hornbook.bench.twin;

import hornbook.advice.fact.FactSheet;
import hornbook.rulebook.fact.Bearing;
import hornbook.rulebook.fact.Crack;
import hornbook.rulebook.fact.Limit;
import hornbook.rulebook.fact.Reading;
import hornbook.rulebook.fact.Seen;
import hornbook.rulebook.fact.Stretch;
import hornbook.rulebook.fact.Urgency;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;

/** One foot while plain Java looks at it, with what it has concluded so far. */
final class HandFoot {
  private final FactSheet sheet;
  private final Set<String> findings = new HashSet<>();
  private final List<HandRules.Conclusion> conclusions = new ArrayList<>();

  HandFoot(FactSheet sheet) {
    this.sheet = sheet;
  }

  List<HandRules.Conclusion> conclusions() {
    return conclusions;
  }

  boolean satisfies(String what, String limit) {
    Reading reading = sheet.readings().get(what);
    Limit held = sheet.limits().get(limit);
    return reading != null && held != null && reading.satisfies(held);
  }

  boolean misses(String what, String limit) {
    Reading reading = sheet.readings().get(what);
    Limit held = sheet.limits().get(limit);
    return reading != null && held != null && reading.misses(held);
  }

  /** Whether a limit holds for such a foot. */
  boolean holds(String limit) {
    return sheet.limits().containsKey(limit);
  }

  /** Whether one of these words was seen. */
  boolean seen(String what, String... words) {
    List<Seen> seen = sheet.seen().get(what);
    return seen != null && seen.stream().anyMatch(one -> is(one.word(), words));
  }

  /** Whether some other word was seen. */
  boolean seenOther(String what, String... words) {
    List<Seen> seen = sheet.seen().get(what);
    return seen != null && seen.stream().anyMatch(one -> isNot(one.word(), words));
  }

  boolean crack(Predicate<Crack> such) {
    return sheet.cracks() != null && sheet.cracks().stream().anyMatch(such);
  }

  boolean stretch(Predicate<Stretch> such) {
    return sheet.wall() != null && sheet.wall().stream().anyMatch(such);
  }

  boolean found(String finding) {
    return findings.contains(finding);
  }

  static boolean is(String word, String... words) {
    for (String one : words) {
      if (one.equals(word)) {
        return true;
      }
    }
    return false;
  }

  static boolean isNot(String word, String... words) {
    return word != null && !is(word, words);
  }

  void finds(String rule, String finding) {
    findings.add(finding);
    conclusions.add(new HandRules.Conclusion(rule, "finding", finding));
  }

  void refers(String rule, Urgency urgency, String danger) {
    conclusions.add(new HandRules.Conclusion(rule, urgency.word(), danger));
  }

  void reason(String rule, Bearing bearing, String... subjects) {
    for (String subject : subjects) {
      conclusions.add(new HandRules.Conclusion(rule, bearing.name(), subject));
    }
  }

  void caution(String rule, String caution) {
    conclusions.add(new HandRules.Conclusion(rule, "caution", caution));
  }
}
