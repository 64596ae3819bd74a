package hornbook.study.coverage;

import hornbook.advice.condition.Appraisal;
import hornbook.advice.condition.RuleState;
import hornbook.advice.engine.Advisor;
import hornbook.advice.fact.FactSheet;
import hornbook.assessment.Assessment;
import hornbook.rulebook.Condition;
import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.fact.Limit;
import hornbook.study.rulecase.CaseLibrary;
import hornbook.study.rulecase.RuleCase;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * How much of a rule base its cases put to the test: every rule fired and silent, every condition
 * seen true and seen false, every limit met at, under and over.
 *
 * @param feet the feet the rules were tried on
 */
public record Coverage(List<RuleCover> rules, List<LimitCover> limits, int feet) {

  /** Holds all rules against all cases, with each change and bracket of theirs. */
  public static Coverage of(Rulebook book, Advisor advisor, CaseLibrary library)
      throws IOException, RuleCase.Unusable {
    Count count = new Count(book, advisor);
    for (RuleCase one : library.rules().values()) {
      count.add(one.assessment());
      count.add(one.with(one.nearMiss()));
      for (String change : one.silent()) {
        count.add(one.with(change));
      }
      for (List<RuleCase.Bracket> brackets : one.limits().values()) {
        for (RuleCase.Bracket bracket : brackets) {
          for (String value : bracket.values()) {
            count.add(one.with(bracket.changes(value)));
          }
        }
      }
    }
    library.exercises().values().forEach(count::add);
    return count.coverage();
  }

  /** Whether nothing is left untested. */
  public boolean whole() {
    return rules.stream().allMatch(RuleCover::whole) && limits.stream().allMatch(LimitCover::whole);
  }

  /** What adds up while the rules are tried on one foot after another. */
  private static final class Count {
    private final Rulebook book;
    private final Advisor advisor;
    private final Map<String, RuleCover.Tally> rules = new LinkedHashMap<>();
    private final Map<Limit, LimitCover.Tally> limits = new LinkedHashMap<>();
    private int feet;

    Count(Rulebook book, Advisor advisor) {
      this.book = book;
      this.advisor = advisor;
      for (RuleEntry rule : book.rules().values()) {
        rules.put(rule.id(), new RuleCover.Tally(rule));
        for (Condition condition : rule.conditions()) {
          if (condition instanceof Condition.OfReading reading) {
            holds(rule.limitBoundTo(reading.limit()), reading.what());
          }
        }
      }
    }

    private void holds(String id, String what) {
      for (Limit limit : book.limits()) {
        if (limit.id().equals(id)) {
          limits.computeIfAbsent(limit, LimitCover.Tally::new).holds(what);
        }
      }
    }

    void add(Assessment assessment) {
      advisor.sheets(assessment).forEach(this::add);
    }

    private void add(FactSheet sheet) {
      feet++;
      for (RuleState state : Appraisal.of(book, sheet).values()) {
        rules.get(state.rule().id()).add(state);
        state.conditions().stream()
            .filter(condition -> condition.limit() != null)
            .forEach(condition -> limits.get(condition.limit()).add(condition));
      }
    }

    Coverage coverage() {
      List<RuleCover> covered = new ArrayList<>();
      rules.values().forEach(tally -> covered.add(tally.cover()));
      List<LimitCover> met = new ArrayList<>();
      limits.values().forEach(tally -> met.add(tally.cover()));
      return new Coverage(List.copyOf(covered), List.copyOf(met), feet);
    }
  }
}
