package hornbook.advice.engine;

import hornbook.advice.condition.AskedConditions;
import hornbook.advice.condition.Signature;
import hornbook.advice.fact.FactSheet;
import hornbook.advice.outcome.Outcome;
import hornbook.assessment.Assessment;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Judges one foot of many variants of an assessment. The rules are fired once for all variants that
 * answer them alike; so many answers are remembered and no more. Safe to use from several threads.
 */
public final class OutcomeCache {
  private static final int MOST_REMEMBERED = 2_000;

  private final Advisor advisor;
  private final AskedConditions asked;
  private final Map<Signature, Outcome> remembered = new ConcurrentHashMap<>();

  public OutcomeCache(Advisor advisor) {
    this.advisor = advisor;
    this.asked = new AskedConditions(advisor.book());
  }

  /** What the advice on the foot at this place comes to. */
  public Outcome of(Assessment assessment, int foot) {
    FactSheet sheet = advisor.sheet(assessment, foot);
    Signature likeness = asked.answers(sheet);
    Outcome known = remembered.get(likeness);
    if (known != null) {
      return known;
    }
    Outcome standing = Outcome.of(advisor.judge(assessment, foot, sheet));
    if (remembered.size() < MOST_REMEMBERED) {
      remembered.put(likeness, standing);
    }
    return standing;
  }

  /** What the rules are told of the foot at this place. */
  public Signature likeness(Assessment assessment, int foot) {
    return asked.answers(advisor.sheet(assessment, foot));
  }
}
