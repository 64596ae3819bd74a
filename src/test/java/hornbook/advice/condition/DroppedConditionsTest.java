package hornbook.advice.condition;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.advice.FootAdvice;
import hornbook.advice.fact.FactSheet;
import hornbook.advice.fact.Truth;
import hornbook.rulebook.Condition;
import hornbook.rulebook.RuleConclusion;
import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.WordTest;
import hornbook.rulebook.fact.Bearing;
import hornbook.rulebook.fact.RowFact;
import hornbook.rules.Shipped;
import hornbook.study.rulecase.RuleCase;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/**
 * Whoever drops a condition of a rule, or one word that a crack or a stretch of wall has to have,
 * is told by the rule's own cases: of every condition they hold a foot on which it alone keeps the
 * rule silent.
 */
class DroppedConditionsTest {
  @Test
  void every_condition_of_every_rule_is_once_the_only_one_that_fails() throws Exception {
    Map<String, Set<String>> survivors = new TreeMap<>();
    Shipped.BOOK.rules().values().forEach(rule -> survivors.put(rule.id(), parts(rule)));
    for (RuleCase one : Shipped.ruleCases().values()) {
      RuleEntry rule = Shipped.BOOK.rules().get(one.rule());
      for (String[] changes : changes(one)) {
        FootAdvice foot = Shipped.ADVISOR.judge(one.with(changes)).feet().get(one.foot());
        survivors.get(one.rule()).removeAll(failingAlone(rule, foot.sheet()));
        survivors.get(one.rule()).removeAll(dealtWithByItAlone(rule, foot));
      }
    }
    survivors.values().removeIf(Set::isEmpty);
    assertThat(survivors).isEmpty();
  }

  /** All ways the cases of a rule change their foot. */
  private static List<String[]> changes(RuleCase one) {
    List<String[]> all = new ArrayList<>();
    all.add(new String[0]);
    all.add(new String[] {one.nearMiss()});
    one.silent().forEach(change -> all.add(new String[] {change}));
    one.limits()
        .values()
        .forEach(
            brackets ->
                brackets.forEach(
                    bracket -> bracket.values().forEach(value -> all.add(bracket.changes(value)))));
    return all;
  }

  /** What can be dropped from a rule: conditions, and of a crack or stretch each of its words. */
  private static Set<String> parts(RuleEntry rule) {
    Set<String> parts = new TreeSet<>();
    for (Condition condition : rule.conditions()) {
      if (!(condition instanceof Condition.OfLimit)) {
        parts.add(condition.variable());
        words(condition).keySet().forEach(word -> parts.add(part(condition, word)));
      }
    }
    return parts;
  }

  private static String part(Condition condition, String word) {
    return condition.variable() + "." + word;
  }

  private static Map<String, WordTest> words(Condition condition) {
    return condition instanceof Condition.OfCrack crack
        ? crack.words()
        : condition instanceof Condition.OfStretch stretch ? stretch.words() : Map.of();
  }

  private static Set<String> failingAlone(RuleEntry rule, FactSheet sheet) {
    Appraisal appraisal = Appraisal.condition(Shipped.BOOK, sheet);
    List<Condition> failing =
        rule.conditions().stream()
            .filter(condition -> appraisal.state(rule, condition).truth() != Truth.TRUE)
            .toList();
    if (failing.size() != 1) {
      return Set.of();
    }
    Condition alone = failing.get(0);
    Set<String> parts = new TreeSet<>(Set.of(alone.variable()));
    for (String word : words(alone).keySet()) {
      Map<String, WordTest> others = new TreeMap<>(words(alone));
      others.remove(word);
      if (rows(alone, sheet).stream().anyMatch(row -> Conditions.of(others, row) == Truth.TRUE)) {
        parts.add(part(alone, word));
      }
    }
    return parts;
  }

  /** The defects that a technique deals with on this foot by no reason but this rule's. */
  private static Set<String> dealtWithByItAlone(RuleEntry rule, FootAdvice foot) {
    Set<String> alone = new TreeSet<>();
    if (foot.firings().stream().noneMatch(fired -> fired.rule().equals(rule.id()))
        || !(rule.outcome() instanceof RuleConclusion.Reasons own)
        || own.bearing() != Bearing.FOR) {
      return alone;
    }
    for (Condition condition : rule.conditions()) {
      if (condition instanceof Condition.OfFinding finding
          && Shipped.BOOK.findings().get(finding.what()).defect()
          && own.subjects().stream().anyMatch(one -> !others(foot, rule, one, finding.what()))) {
        alone.add(condition.variable());
      }
    }
    return alone;
  }

  /** Whether another rule gives a reason for the subject that deals with the finding. */
  private static boolean others(FootAdvice foot, RuleEntry rule, String subject, String finding) {
    return foot.firings().stream()
        .filter(fired -> !fired.rule().equals(rule.id()))
        .map(fired -> Shipped.BOOK.rules().get(fired.rule()))
        .anyMatch(
            other ->
                other.outcome() instanceof RuleConclusion.Reasons reasons
                    && reasons.bearing() == Bearing.FOR
                    && reasons.subjects().contains(subject)
                    && other.conditions().stream()
                        .anyMatch(
                            one ->
                                one instanceof Condition.OfFinding of
                                    && of.what().equals(finding)));
  }

  private static List<? extends RowFact> rows(Condition condition, FactSheet sheet) {
    List<? extends RowFact> rows =
        condition instanceof Condition.OfCrack ? sheet.cracks() : sheet.wall();
    return rows == null ? List.of() : rows;
  }
}
