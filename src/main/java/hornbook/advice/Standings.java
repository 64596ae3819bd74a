package hornbook.advice;

import hornbook.assessment.Assessment;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * Judges one foot of many variants of an assessment. The rules are fired once for all variants that
 * answer them alike; so many answers are remembered and no more. Safe to use from several threads.
 */
public final class Standings {
  private static final int MOST_REMEMBERED = 2_000;

  private final Advisor advisor;
  private final Asked asked;
  private final Map<Likeness, Standing> remembered = new ConcurrentHashMap<>();

  public Standings(Advisor advisor) {
    this.advisor = advisor;
    this.asked = new Asked(advisor.book());
  }

  /** What the advice on the foot at this place comes to. */
  public Standing of(Assessment assessment, int foot) {
    FactSheet sheet = advisor.sheet(assessment, foot);
    Likeness likeness = asked.answers(sheet);
    Standing known = remembered.get(likeness);
    if (known != null) {
      return known;
    }
    Standing standing = Standing.of(advisor.judge(assessment, foot, sheet));
    if (remembered.size() < MOST_REMEMBERED) {
      remembered.put(likeness, standing);
    }
    return standing;
  }

  /** What the rules are told of the foot at this place. */
  public Likeness likeness(Assessment assessment, int foot) {
    return asked.answers(advisor.sheet(assessment, foot));
  }
}
