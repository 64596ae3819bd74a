package hornbook.advice.condition;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.rules.Shipped;
import hornbook.study.Given;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Feet are alike to the rules only if no rule could tell them apart. */
class AskedConditionsTest {
  private static final String FOOT =
      "lameness: 0, measures: {toeLength: 80 mm, heelLength: 35 mm},"
          + " signs: {digitalPulse: normal},"
          + " wall: [{side: medial, from: 0 mm, to: 60 mm, state: sound}],"
          + " cracks: [{place: toe, starts: ground, depth: superficial}]";

  private static Signature signature(String foot) {
    return new AskedConditions(Shipped.BOOK)
        .answers(Shipped.ADVISOR.sheet(Given.leftFore(foot), 0));
  }

  @Test
  void the_same_foot_gives_the_same_answers() {
    assertThat(signature(FOOT)).isEqualTo(signature(FOOT));
    assertThat(signature(FOOT.replace("toeLength: 80 mm", "toeLength: 80.1 mm")))
        .as("no limit lies between")
        .isEqualTo(signature(FOOT));
  }

  @ParameterizedTest
  @CsvSource({
    "lameness: 0, lameness: 3",
    "heelLength: 35 mm, heelLength: 15 mm",
    "digitalPulse: normal, digitalPulse: bounding",
    "state: sound, state: separated",
    "depth: superficial, depth: deep",
    "place: toe, place: heel",
  })
  void what_some_rule_tells_apart_is_not_the_same(String from, String to) {
    assertThat(FOOT).contains(from);
    assertThat(signature(FOOT.replace(from, to))).isNotEqualTo(signature(FOOT));
  }
}
