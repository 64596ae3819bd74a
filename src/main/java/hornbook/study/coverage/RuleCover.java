package hornbook.study.coverage;

import hornbook.advice.condition.ConditionState;
import hornbook.advice.condition.RuleState;
import hornbook.advice.fact.Truth;
import hornbook.rulebook.Condition;
import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.Subjects;
import java.util.ArrayList;
import java.util.List;

/**
 * How the cases put one rule to the test.
 *
 * @param fired the feet on which it fired
 * @param silent the feet on which it was silent for something known to be otherwise
 */
public record RuleCover(RuleEntry rule, int fired, int silent, List<Seen> conditions) {

  /**
   * How one condition was seen.
   *
   * @param alone the feet on which it was the only condition that was false; none for one that
   *     follows from the others and is there to be cited
   */
  public record Seen(Condition condition, int yes, int no, int alone) {
    /** Whether it was seen both true and false. */
    public boolean whole() {
      return yes > 0 && (!canFail() || no > 0);
    }

    /** A word that may be any of all there are only asks that somebody looked. */
    public boolean canFail() {
      return !(condition instanceof Condition.OfSeen seen)
          || !Subjects.words(seen.what()).stream().allMatch(seen.word()::passes);
    }
  }

  /** Whether the rule fired, was silent, and every condition of it was put to the test. */
  public boolean whole() {
    return fired > 0 && silent > 0 && conditions.stream().allMatch(Seen::whole);
  }

  /** Adds up foot by foot. */
  static final class Tally {
    private final RuleEntry rule;
    private final int[] yes;
    private final int[] no;
    private final int[] alone;
    private int fired;
    private int silent;

    Tally(RuleEntry rule) {
      this.rule = rule;
      int conditions = rule.conditions().size();
      this.yes = new int[conditions];
      this.no = new int[conditions];
      this.alone = new int[conditions];
    }

    void add(RuleState state) {
      fired += state.truth() == Truth.TRUE ? 1 : 0;
      silent += state.truth() == Truth.FALSE ? 1 : 0;
      int fails = -1;
      int others = 0;
      for (int at = 0; at < yes.length; at++) {
        ConditionState condition = state.conditions().get(at);
        if (condition.truth() == Truth.TRUE) {
          yes[at]++;
          continue;
        }
        if (condition.truth() == Truth.FALSE) {
          no[at]++;
          fails = at;
        }
        others++;
      }
      if (fails >= 0 && others == 1) {
        alone[fails]++;
      }
    }

    /** A limit alone asks nothing: only what is compared with it does. */
    RuleCover cover() {
      List<Seen> seen = new ArrayList<>();
      for (int at = 0; at < yes.length; at++) {
        if (!(rule.conditions().get(at) instanceof Condition.OfLimit)) {
          seen.add(new Seen(rule.conditions().get(at), yes[at], no[at], alone[at]));
        }
      }
      return new RuleCover(rule, fired, silent, List.copyOf(seen));
    }
  }
}
