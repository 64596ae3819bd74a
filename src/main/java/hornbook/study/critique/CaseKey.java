package hornbook.study.critique;

import hornbook.advice.Advice;
import hornbook.advice.FootAdvice;
import hornbook.advice.engine.Advisor;
import hornbook.assessment.Assessment;
import hornbook.assessment.Limb;
import hornbook.study.exercise.Exercise;
import hornbook.study.exercise.Expected;
import hornbook.study.exercise.ModelAnswer;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What answers on a case, or on a foot of one's own, are compared with.
 *
 * @param name of the case, or null
 * @param feet those to be answered, in the order of the assessment
 */
public record CaseKey(String name, Advice advice, Map<Limb, FootKey> feet) {
  /** The key to a teaching case: of the feet it expects an answer on. */
  public static CaseKey of(Exercise exercise, Advisor advisor) {
    Advice advice = advisor.advise(exercise.assessment());
    Map<Limb, FootKey> feet = new LinkedHashMap<>();
    for (FootAdvice foot : advice.feet()) {
      Expected expected = exercise.expected().get(foot.limb());
      if (expected != null) {
        feet.put(
            foot.limb(),
            new FootKey(
                advice.rulebook(),
                foot,
                ModelAnswer.of(advice, foot, expected),
                exercise.differs(foot.limb()),
                exercise.assessment().visit().vet()));
      }
    }
    return new CaseKey(exercise.name(), advice, Collections.unmodifiableMap(feet));
  }

  /** The key to an assessment of one's own, without model answer: of every foot. */
  public static CaseKey of(Assessment assessment, Advisor advisor) {
    Advice advice = advisor.advise(assessment);
    Map<Limb, FootKey> feet = new LinkedHashMap<>();
    for (FootAdvice foot : advice.feet()) {
      feet.put(
          foot.limb(),
          new FootKey(
              advice.rulebook(),
              foot,
              ModelAnswer.of(advice, foot, null),
              List.of(),
              assessment.visit().vet()));
    }
    return new CaseKey(null, advice, Collections.unmodifiableMap(feet));
  }
}
