package hornbook.report.words;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.advice.Advice;
import hornbook.assessment.read.AssessmentReader;
import hornbook.assessment.read.ReadResult;
import hornbook.rules.Shipped;
import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import org.junit.jupiter.api.Test;

class HeldWordsTest {
  @Test
  void aFootInDangerSaysWhyItsPairWaits() throws IOException {
    Advice advice = advice("one-hot-foot");
    assertThat(HeldWords.on(advice.feet().get(0))).isEmpty();
    assertThat(HeldWords.on(advice.feet().get(1)))
        .singleElement()
        .asString()
        .startsWith("VET NOW for the left fore");
  }

  @Test
  void twoFeetInOneDangerDoNotPointAtEachOther() throws IOException {
    Advice advice = advice("hot-left-pounding-right");
    assertThat(advice.feet()).allMatch(foot -> !foot.sheet().held().isEmpty());
    assertThat(advice.feet()).allMatch(foot -> HeldWords.on(foot).isEmpty());
  }

  private static Advice advice(String exercise) throws IOException {
    byte[] file = Files.readAllBytes(Shipped.EXERCISES.resolve(exercise + ".yaml"));
    ReadResult read = AssessmentReader.read(file, exercise, List.of());
    return Shipped.ADVISOR.advise(((ReadResult.Good) read).assessment());
  }
}
