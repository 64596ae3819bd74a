package hornbook.madeup;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.advice.FootAdvice;
import hornbook.advice.Verdict;
import hornbook.assessment.Assessment;
import hornbook.assessment.WallStretch;
import hornbook.assessment.read.AssessmentEdit;
import hornbook.assessment.tree.Fault;
import hornbook.rules.Shipped;
import hornbook.study.rulecase.CaseFeet;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

/** Nothing is bonded, wrapped or rebuilt over a place that stays damp or weeps. */
class NothingOverWeepingTest {
  private static final List<String> COVERING = List.of("glue-on", "cast-wrap", "prosthetic-wall");

  @Test
  void whatWeepsIsNeverCovered() throws Exception {
    AtomicInteger weeping = new AtomicInteger();
    new Horses(61)
        .each(
            horse -> {
              for (FootAdvice foot : Shipped.ADVISOR.judge(horse).feet()) {
                if (weeps(horse, foot)) {
                  weeping.incrementAndGet();
                  assertThat(COVERING).noneMatch(technique -> covered(foot, technique));
                }
              }
            });
    assertThat(weeping.get()).isGreaterThan(Horses.HOW_MANY / 10);
  }

  /** Feet of the cases that may be covered, with any one stretch of their wall weeping instead. */
  @Test
  void oneWeepingStretchTakesTheCoverAway() throws Exception {
    List<Fault> faults = new ArrayList<>();
    int covered = 0;
    for (Assessment horse : CaseFeet.read(Path.of("cases"), faults).values()) {
      for (FootAdvice foot : Shipped.ADVISOR.judge(horse).feet()) {
        List<WallStretch> wall = horse.feet().get(foot.index()).wall();
        if (wall == null || COVERING.stream().noneMatch(technique -> covered(foot, technique))) {
          continue;
        }
        for (int at = 0; at < wall.size(); at++) {
          String place = "feet[%d].wall[%d].".formatted(foot.index(), at);
          Assessment dried = AssessmentEdit.of(place + "damp").with(horse, null);
          Assessment wet = AssessmentEdit.of(place + "moist").with(dried, true);
          FootAdvice then = Shipped.ADVISOR.judge(wet).feet().get(foot.index());
          assertThat(COVERING).as(place).noneMatch(technique -> covered(then, technique));
          covered++;
        }
      }
    }
    assertThat(faults).isEmpty();
    assertThat(covered).isGreaterThan(100);
  }

  private static boolean weeps(Assessment horse, FootAdvice foot) {
    List<WallStretch> wall = horse.feet().get(foot.index()).wall();
    return wall != null && wall.stream().anyMatch(one -> Boolean.TRUE.equals(one.moist()));
  }

  private static boolean covered(FootAdvice foot, String technique) {
    Verdict verdict = foot.technique(technique).verdict();
    return verdict == Verdict.FIRST_CHOICE || verdict == Verdict.WORKABLE;
  }
}
