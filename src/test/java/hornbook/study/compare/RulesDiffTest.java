package hornbook.study.compare;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import hornbook.assessment.Assessment;
import hornbook.assessment.tree.Fault;
import hornbook.report.rules.RulesDiffJson;
import hornbook.report.rules.RulesDiffText;
import hornbook.rulebook.fact.Limit;
import hornbook.rulebook.load.LoadedRules;
import hornbook.rules.Shipped;
import hornbook.study.compare.RulesDiff.Fate;
import hornbook.study.compare.RulesDiff.Part;
import hornbook.study.compare.RulesDiff.Turn;
import hornbook.study.rulecase.CaseFeet;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What changes between two rule bases is told, and nothing else is. */
class RulesDiffTest {
  private static final Map<String, Assessment> FEET = feet();

  private static Map<String, Assessment> feet() {
    List<Fault> faults = new ArrayList<>();
    try {
      return CaseFeet.read(Path.of("cases"), faults);
    } catch (java.io.IOException unreadable) {
      throw new AssertionError(unreadable);
    } finally {
      assertThat(faults).isEmpty();
    }
  }

  private static LoadedRules moved(String id, double value) {
    List<Limit> limits = new ArrayList<>(Shipped.BOOK.limits());
    limits.replaceAll(limit -> limit.id().equals(id) ? limit.withValue(value) : limit);
    return Shipped.RULES.under(Shipped.BOOK.withLimits(limits));
  }

  @Test
  void every_case_and_near_miss_is_run() throws Exception {
    assertThat(FEET.keySet())
        .contains("rules/N003.yaml", "rules/N003.yaml, near-miss")
        .hasSize(2 * Shipped.ruleCases().size() + Shipped.files(Shipped.EXERCISES).size());
  }

  @Test
  void the_same_rules_differ_in_nothing() {
    RulesDiff diff = RulesDiff.of(Shipped.RULES, Shipped.RULES, FEET);
    assertThat(diff.parts()).isEmpty();
    assertThat(diff.cases()).isEmpty();
    assertThat(diff.run()).isGreaterThanOrEqualTo(FEET.size());
    assertThat(RulesDiffText.render(diff)).contains("the same on every foot of every case");
  }

  @Test
  void a_limit_moved_is_told_with_the_advice_it_changes() throws Exception {
    RulesDiff diff = RulesDiff.of(Shipped.RULES, moved("nails.branch.least", 3), FEET);
    assertThat(diff.parts())
        .containsExactly(
            new Part(
                Fate.CHANGED,
                false,
                "nails.branch.least",
                "fewest nails that hold a branch",
                List.of("value 2 -> 3")));
    assertThat(diff.cases()).isNotEmpty();
    assertThat(diff.cases())
        .allSatisfy(change -> assertThat(change.turns()).isNotEmpty())
        .anySatisfy(
            change ->
                assertThat(change.turns())
                    .anyMatch(
                        turn -> turn.what().equals("nail-on") && turn.after().equals("ruled-out")));
    RulesDiff back = RulesDiff.of(moved("nails.branch.least", 3), Shipped.RULES, FEET);
    assertThat(back.cases()).hasSameSizeAs(diff.cases());
    for (int at = 0; at < diff.cases().size(); at++) {
      assertThat(back.cases().get(at).turns())
          .isEqualTo(
              diff.cases().get(at).turns().stream()
                  .map(turn -> new Turn(turn.what(), turn.after(), turn.before()))
                  .toList());
    }
    JsonNode json = new ObjectMapper().readTree(RulesDiffJson.render(diff));
    assertThat(json.get("cases")).hasSize(diff.cases().size());
  }

  @Test
  void a_referral_that_comes_sooner_is_told_by_its_name() {
    RulesDiff diff = RulesDiff.of(Shipped.RULES, moved("referral.sole.least", 15), FEET);
    assertThat(diff.cases().stream().flatMap(change -> change.turns().stream()))
        .anyMatch(turn -> turn.what().equals("referrals"));
    assertThat(RulesDiffText.render(diff))
        .contains("changed: referral.sole.least")
        .contains("value 10 mm -> 15 mm")
        .contains("calls for the vet:");
  }
}
