package hornbook.study.exercise;

import hornbook.assessment.Limb;
import java.util.List;

/**
 * What a learner thinks of a case, foot by foot.
 *
 * @param by name or number of the learner, or null
 * @param caseName the case it is about, or null for a foot of one's own
 */
public record LearnerAnswer(String by, String caseName, List<FootAnswer> feet) {
  /** The name of the format, which every answer states. */
  public static final String FORMAT = "hornbook-answer/1";

  /** The answer on one foot; a blank one where nothing was said of it. */
  public FootAnswer foot(Limb limb) {
    return feet.stream()
        .filter(foot -> foot.limb() == limb)
        .findFirst()
        .orElse(FootAnswer.blank(limb));
  }
}
