package hornbook.advice.outcome;

import hornbook.advice.Advice;
import hornbook.advice.FootAdvice;
import hornbook.advice.Verdict;
import hornbook.advice.fact.FactSheet;
import hornbook.assessment.VetRole;
import hornbook.rulebook.fact.Basis;
import hornbook.rulebook.fact.Limit;
import hornbook.rulebook.fact.Reading;
import java.util.BitSet;
import java.util.Map;
import java.util.Optional;

/**
 * A first choice that turns on a reading within hand measuring error of a limit from memory.
 *
 * @param chosen the first choice as measured
 * @param other the first choice were the reading on the other side of the limit; null for none
 */
public record NearEqual(Reading reading, Limit limit, String chosen, String other) {
  /** The first such reading that brings another choice, else one that leaves none; mostly empty. */
  public static Optional<NearEqual> of(Advice advice, FootAdvice foot) {
    if (foot.firstChoice().isEmpty()) {
      return Optional.empty();
    }
    String chosen = foot.firstChoice().get().id();
    FactSheet sheet = foot.sheet();
    HandError error = new HandError(sheet, advice.assessment().feet().get(foot.index()).wall());
    AskedLimits asked = AskedLimits.of(advice.rulebook());
    VetRole vet = advice.assessment().visit().vet();
    RuleTable table = null;
    BitSet met = null;
    NearEqual without = null;
    for (Reading reading : sheet.readings().values()) {
      for (String id : asked.of(reading.what())) {
        Limit limit = sheet.limits().get(id);
        if (limit == null || limit.basis() != Basis.MEMORY || !error.reaches(reading, limit)) {
          continue;
        }
        if (table == null) {
          table = RuleTable.of(advice.rulebook());
          met = table.met(sheet);
        }
        BitSet across = table.across(met, reading.what(), limit.id());
        String other = first(table.standing(table.fired(across), vet));
        if (other != null && !other.equals(chosen)) {
          return Optional.of(new NearEqual(reading, limit, chosen, other));
        }
        if (other == null && without == null) {
          without = new NearEqual(reading, limit, chosen, null);
        }
      }
    }
    return Optional.ofNullable(without);
  }

  private static String first(Outcome outcome) {
    return outcome.techniques().entrySet().stream()
        .filter(one -> one.getValue() == Verdict.FIRST_CHOICE)
        .map(Map.Entry::getKey)
        .findFirst()
        .orElse(null);
  }
}
