package hornbook.advice.question;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.advice.FootAdvice;
import hornbook.advice.Question;
import hornbook.assessment.Assessment;
import hornbook.rules.Shipped;
import hornbook.study.Given;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Whether advice is provisional is told the same in brief as from the questions themselves. */
class ProvisionalTest {
  @Test
  void in_brief_as_by_the_questions_on_every_case() throws Exception {
    Map<String, Assessment> all = new LinkedHashMap<>();
    Shipped.ruleCases().forEach((name, one) -> all.put(name, one.assessment()));
    for (Path file : Shipped.files(Shipped.EXERCISES)) {
      all.put(file.toString(), Given.read(file).assessment());
    }
    int provisional = 0;
    int settled = 0;
    for (Map.Entry<String, Assessment> one : all.entrySet()) {
      Assessment assessment = one.getValue();
      List<FootAdvice> whole = Shipped.ADVISOR.advise(assessment).feet();
      List<FootAdvice> brief = Shipped.ADVISOR.brief(assessment).feet();
      for (int foot = 0; foot < whole.size(); foot++) {
        boolean asked = whole.get(foot).questions().stream().anyMatch(Question::provisional);
        assertThat(brief.get(foot).provisional()).as(one.getKey()).isEqualTo(asked);
        assertThat(whole.get(foot).provisional()).isEqualTo(asked);
        assertThat(brief.get(foot).techniques()).isEqualTo(whole.get(foot).techniques());
        provisional += asked ? 1 : 0;
        settled += asked ? 0 : 1;
      }
    }
    assertThat(provisional).isGreaterThan(20);
    assertThat(settled).isGreaterThan(20);
  }
}
