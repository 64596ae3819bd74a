package hornbook.assessment.tree;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NearestTest {
  private static final List<String> PULSE = List.of("normal", "raised", "bounding", "unknown");

  /** The pairs textbooks of string matching use, and swaps as Damerau counts them. */
  @ParameterizedTest
  @CsvSource({
    "kitten, sitting, 3",
    "saturday, sunday, 3",
    "flaw, lawn, 2",
    "intention, execution, 5",
    "teh, the, 1",
    "abcd, acbd, 1",
    "'', abc, 3",
    "abc, abc, 0"
  })
  void countsSlips(String one, String other, int slips) {
    assertThat(Nearest.distance(one, other)).isEqualTo(slips);
    assertThat(Nearest.distance(other, one)).isEqualTo(slips);
  }

  @ParameterizedTest
  @CsvSource({
    "boundng, bounding",
    "Bounding, bounding",
    "rasied, raised",
    "unkown, unknown",
    "norm-al, normal"
  })
  void findsTheWordMeant(String written, String meant) {
    assertThat(Nearest.of(written, PULSE)).isEqualTo(meant);
  }

  @ParameterizedTest
  @CsvSource({"glue, glue-on", "Wrap, cast-wrap", "nail, nail-on", "leave, leave-open"})
  void findsTheWordOfWhichAPartWasGiven(String written, String meant) {
    List<String> techniques =
        List.of("leave-open", "nail-on", "nail-on-adapted", "glue-on", "cast-wrap");
    assertThat(Nearest.of(written, techniques)).isEqualTo(meant);
    assertThat(Nearest.of("on", techniques)).isNull();
  }

  @Test
  void guessesNothingFarFetched() {
    assertThat(Nearest.of("strong", PULSE)).isNull();
    assertThat(Nearest.of("", PULSE)).isNull();
    assertThat(Nearest.of("x".repeat(5000), PULSE)).isNull();
  }
}
