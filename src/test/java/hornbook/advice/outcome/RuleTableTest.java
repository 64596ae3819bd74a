package hornbook.advice.outcome;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.advice.FootAdvice;
import hornbook.assessment.AnyAssessment;
import hornbook.assessment.Assessment;
import hornbook.assessment.read.AssessmentReader;
import hornbook.assessment.read.ReadResult;
import hornbook.rules.Shipped;
import hornbook.study.rulecase.RuleCase;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;

/** The table of conditions advises as the engine does. */
class RuleTableTest {
  private static final RuleTable TABLE = new RuleTable(Shipped.BOOK);

  @Test
  void advises_like_the_engine_on_every_case_and_exercise() throws Exception {
    for (RuleCase one : Shipped.ruleCases().values()) {
      agrees(one.assessment(), one.rule());
    }
    for (Path file : Shipped.files(Shipped.EXERCISES)) {
      ReadResult read = AssessmentReader.read(Files.readAllBytes(file), file.toString(), List.of());
      agrees(((ReadResult.Good) read).assessment(), file.toString());
    }
  }

  @Property(tries = 200)
  void advises_like_the_engine_on_any_foot(@ForAll("assessments") Assessment any) {
    agrees(any, any.toString());
  }

  @Provide
  Arbitrary<Assessment> assessments() {
    return AnyAssessment.valid();
  }

  private static void agrees(Assessment assessment, String where) {
    for (FootAdvice foot : Shipped.ADVISOR.judge(assessment).feet()) {
      Outcome onPaper =
          TABLE.standing(TABLE.fired(TABLE.met(foot.sheet())), assessment.visit().vet());
      assertThat(onPaper).as(where).isEqualTo(Outcome.of(foot));
    }
  }
}
