package hornbook.advice.condition;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.advice.engine.Advisor;
import hornbook.advice.fact.FactSheet;
import hornbook.advice.fact.Truth;
import hornbook.assessment.Assessment;
import hornbook.rulebook.fact.Limit;
import hornbook.rules.Shipped;
import hornbook.study.Given;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

/** Numbers are compared with the limits of the foot they are of, whoever was looked at before. */
class ComparedNumbersTest {
  private static final int SETS_OF_LIMITS = 12;

  @Test
  void feet_under_ever_other_limits_are_told_apart() {
    Assessment horse = Given.exercise("long-toe-under-run-heels");
    List<FactSheet> sheets = new ArrayList<>();
    for (int set = 0; set < SETS_OF_LIMITS; set++) {
      int by = 4 * (set - SETS_OF_LIMITS / 2);
      List<Limit> moved = new ArrayList<>(Shipped.BOOK.limits());
      moved.replaceAll(one -> one.computing() ? one : one.withValue(one.value() + by * one.step()));
      sheets.addAll(new Advisor(Shipped.RULES.under(Shipped.BOOK.withLimits(moved))).sheets(horse));
    }
    OpenRules rules = new OpenRules(Shipped.BOOK);
    List<Map<String, Truth>> all = new ArrayList<>();
    for (int round = 0; round < 2; round++) {
      for (FactSheet sheet : sheets) {
        Map<String, Truth> told = new TreeMap<>();
        rules.on(sheet).forEach(state -> told.put(state.rule().id(), state.truth()));
        Map<String, Truth> held = new TreeMap<>();
        Appraisal.of(Shipped.BOOK, sheet).forEach((id, state) -> held.put(id, state.truth()));
        held.values().removeIf(Truth.FALSE::equals);
        assertThat(told).isEqualTo(held);
        all.add(told);
      }
    }
    assertThat(all.stream().distinct()).as("the limits matter").hasSizeGreaterThan(3);
  }
}
