package hornbook.advice.outcome;

import hornbook.advice.FootAdvice;
import hornbook.advice.OptionAdvice;
import hornbook.advice.Verdict;
import hornbook.rulebook.fact.Urgency;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * What the advice on a foot comes to, without what it rests on: two feet may stand alike though
 * they measure differently.
 *
 * @param techniques the verdict on every technique, in order of intervention
 * @param supports the verdict on every support
 * @param referrals how soon the vet is wanted, by the id of the danger
 * @param findings the names found
 * @param cautions the ids of the cautions given
 * @param fired the ids of the rules that fired
 */
public record Outcome(
    Map<String, Verdict> techniques,
    Map<String, Verdict> supports,
    Map<String, Urgency> referrals,
    Set<String> findings,
    Set<String> cautions,
    Set<String> fired) {

  public static Outcome of(FootAdvice foot) {
    Map<String, Urgency> referrals = new LinkedHashMap<>();
    foot.referrals().forEach(one -> referrals.put(one.id(), one.urgency()));
    Set<String> findings = new TreeSet<>();
    foot.findings().forEach(one -> findings.add(one.id()));
    Set<String> cautions = new TreeSet<>();
    foot.cautions().forEach(one -> cautions.add(one.id()));
    Set<String> fired = new TreeSet<>();
    foot.firings().forEach(one -> fired.add(one.rule()));
    return new Outcome(
        verdicts(foot.techniques()),
        verdicts(foot.supports()),
        referrals,
        findings,
        cautions,
        fired);
  }

  private static Map<String, Verdict> verdicts(List<OptionAdvice> all) {
    Map<String, Verdict> verdicts = new LinkedHashMap<>();
    all.forEach(one -> verdicts.put(one.id(), one.verdict()));
    return verdicts;
  }

  /** The technique that is first choice, or empty. */
  public Optional<String> firstChoice() {
    return techniques.entrySet().stream()
        .filter(one -> one.getValue() == Verdict.FIRST_CHOICE)
        .map(Map.Entry::getKey)
        .findFirst();
  }

  /** The verdict on a technique or a support; null where it is neither. */
  public Verdict verdict(String id) {
    return techniques.getOrDefault(id, supports.get(id));
  }

  /** Whether nothing a farrier would do differs: verdicts and calls for the vet are the same. */
  public boolean sameAdvice(Outcome other) {
    return techniques.equals(other.techniques)
        && supports.equals(other.supports)
        && referrals.equals(other.referrals);
  }
}
