package hornbook.bench;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.advice.fact.FactSheet;
import hornbook.bench.twin.HandRules;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Plain Java concludes what the engine does, on every foot of every case: verdicts rest on it. */
class TwinTest {
  @Test
  void both_conclude_the_same_on_every_foot() {
    NailingAndReferral engine = new NailingAndReferral(Feet.RULES.book());
    List<FactSheet> sheets = Feet.sheets();
    int concluded = 0;
    for (FactSheet sheet : sheets) {
      Set<HandRules.Conclusion> byHand = new HashSet<>(HandRules.of(sheet));
      assertThat(byHand).isEqualTo(engine.concluded(sheet));
      concluded += byHand.size();
    }
    assertThat(sheets).hasSizeGreaterThan(500);
    assertThat(concluded).isGreaterThan(sheets.size());
  }
}
