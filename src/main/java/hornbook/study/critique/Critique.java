package hornbook.study.critique;

import hornbook.study.exercise.LearnerAnswer;
import java.util.List;

/** An answer compared with the rule base. */
public record Critique(CaseKey key, LearnerAnswer answer, List<FootCritique> feet) {
  public long dangerous() {
    return feet.stream().mapToLong(FootCritique::dangerous).sum();
  }
}
