package hornbook.advice;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.assessment.read.AssessmentReader;
import hornbook.assessment.read.ReadResult;
import hornbook.rulebook.fact.Bearing;
import hornbook.rules.Shipped;
import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** What waits on a foot for a call on another says which foot calls, and for what. */
class OtherFootTest {
  @Test
  void a_reason_names_the_foot_and_the_call() throws IOException {
    byte[] file = Files.readAllBytes(Shipped.EXERCISES.resolve("one-hot-foot.yaml"));
    ReadResult read = AssessmentReader.read(file, "one-hot-foot", List.of());
    FootAdvice other = Shipped.ADVISOR.advise(((ReadResult.Good) read).assessment()).feet().get(1);
    assertThat(other.sheet().held()).isNotEmpty();
    List<ReasonGiven> reasons =
        other.techniques().stream()
            .flatMap(one -> one.reasons().stream())
            .filter(one -> one.heldBack() != null && one.heldBack().from() != null)
            .toList();
    assertThat(reasons)
        .isNotEmpty()
        .allSatisfy(
            one -> {
              String title = Shipped.BOOK.rules().get(one.rule()).title();
              String call = title.substring(0, 1).toLowerCase(Locale.ROOT) + title.substring(1);
              assertThat(one.bearing()).isEqualTo(Bearing.NEEDS_VET);
              assertThat(one.says().template())
                  .isEqualTo("The left fore foot calls the vet: " + call + ".");
            });
  }
}
