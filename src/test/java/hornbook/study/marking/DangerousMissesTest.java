package hornbook.study.marking;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.advice.OptionAdvice;
import hornbook.advice.ReferralGiven;
import hornbook.advice.Verdict;
import hornbook.assessment.VetRole;
import hornbook.rulebook.NamedOption;
import hornbook.rulebook.RuleConclusion;
import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.fact.Urgency;
import hornbook.rules.Shipped;
import hornbook.study.critique.CaseKey;
import hornbook.study.critique.FootKey;
import hornbook.study.critique.PointVerdict;
import hornbook.study.exercise.Answers;
import hornbook.study.exercise.FootAnswer;
import hornbook.study.rulecase.RuleCase;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * The catalogue of dangerous misses: for every danger that calls the vet now or today a foot on
 * which the call is not made, for every technique a foot on which it is forbidden and chosen all
 * the same. Everything else in the answer is right; the mark is capped.
 */
class DangerousMissesTest {
  /** A foot, and an answer with one dangerous thing in it. */
  private record Miss(String name, CaseKey key, FootAnswer answer, PointVerdict verdict) {}

  private static List<Miss> catalogue() throws Exception {
    List<Miss> all = new ArrayList<>(calls().values());
    all.addAll(techniques().values());
    return all;
  }

  /** One for each danger. */
  private static Map<String, Miss> calls() throws Exception {
    Map<String, Miss> misses = new TreeMap<>();
    for (RuleCase one : Shipped.ruleCases().values()) {
      RuleEntry rule = Shipped.BOOK.rules().get(one.rule());
      if (rule.outcome() instanceof RuleConclusion.Refers refers
          && refers.urgency().compareTo(Urgency.TODAY) <= 0) {
        CaseKey key = Lessons.key(one.assessment());
        FootKey foot = List.copyOf(key.feet().values()).get(one.foot());
        FootAnswer none = Answers.vet(foot.model(), "none", List.of());
        String name = refers.urgency().word() + ": " + refers.id();
        misses.put(name, new Miss(name, key, none, PointVerdict.MISSED_DANGEROUS));
      }
    }
    return misses;
  }

  /** One for each technique a call for the vet forbids, and one for each that a rule rules out. */
  private static Map<String, Miss> techniques() throws Exception {
    Map<String, Miss> misses = new TreeMap<>();
    List<CaseKey> keys = new ArrayList<>(Lessons.KEYS.values());
    for (RuleCase one : Shipped.ruleCases().values()) {
      keys.add(Lessons.key(one.assessment()));
    }
    for (CaseKey key : keys) {
      boolean directs = key.advice().assessment().visit().vet() == VetRole.DIRECTING;
      for (FootKey foot : key.feet().values()) {
        for (OptionAdvice technique : foot.foot().techniques()) {
          boolean urgent = technique.reasons().stream().anyMatch(one -> one.heldBack() != null);
          boolean ruledOut = technique.verdict() == Verdict.RULED_OUT;
          if ((urgent || ruledOut) && !directs) {
            String name = (urgent ? "the vet first: " : "ruled out: ") + technique.id();
            String why = urgent ? "the owner signs for it" : null;
            FootAnswer chosen = Answers.technique(foot.model(), technique.id(), why);
            misses.putIfAbsent(name, new Miss(name, key, chosen, PointVerdict.UNFOUNDED_DANGEROUS));
          }
        }
      }
    }
    return misses;
  }

  @TestFactory
  Stream<DynamicTest> each_caps_the_mark_and_is_said_to_be_dangerous() throws Exception {
    return catalogue().stream()
        .map(miss -> DynamicTest.dynamicTest(miss.name(), () -> assertCapped(miss)));
  }

  private static void assertCapped(Miss miss) {
    List<FootAnswer> feet = new ArrayList<>(Lessons.model(miss.key()).feet());
    feet.replaceAll(one -> one.limb() == miss.answer().limb() ? miss.answer() : one);
    AnswerMarks marks =
        Lessons.marks(miss.key(), Lessons.answer(miss.key(), feet.toArray(FootAnswer[]::new)));
    assertThat(marks.capped()).isTrue();
    assertThat(marks.marks()).isLessThanOrEqualTo(marks.cap()).isLessThan(marks.before());
    assertThat(marks.critique().feet())
        .flatExtracting("points")
        .extracting("verdict")
        .contains(miss.verdict());
    assertThat(marks.critique().feet())
        .anySatisfy(foot -> assertThat(foot.points().get(0).verdict().dangerous()).isTrue());
  }

  @Test
  void there_is_one_for_every_danger_and_for_every_technique() throws Exception {
    List<String> dangers =
        Shipped.BOOK.rules().values().stream()
            .map(RuleEntry::outcome)
            .filter(RuleConclusion.Refers.class::isInstance)
            .map(RuleConclusion.Refers.class::cast)
            .filter(one -> one.urgency().compareTo(Urgency.TODAY) <= 0)
            .map(one -> one.urgency().word() + ": " + one.id())
            .distinct()
            .toList();
    assertThat(calls().keySet()).containsExactlyInAnyOrderElementsOf(dangers);
    Map<String, Miss> chosen = techniques();
    for (NamedOption technique : Shipped.BOOK.techniques()) {
      if (!technique.firstAid() || heldBack(technique.id())) {
        assertThat(chosen).containsKey("the vet first: " + technique.id());
      }
    }
    assertThat(catalogue()).hasSizeGreaterThanOrEqualTo(30);
  }

  /** First aid waits for the vet only where a call names it. */
  private static boolean heldBack(String technique) {
    return Shipped.BOOK.rules().values().stream()
        .anyMatch(rule -> rule.text().reserves().subjects().contains(technique));
  }

  @Test
  void a_danger_left_unnamed_while_the_vet_is_called_in_time_is_a_miss_and_no_more() {
    CaseKey key = Lessons.KEYS.get("nail-in-the-frog");
    FootAnswer model = key.feet().values().iterator().next().model();
    AnswerMarks marks =
        Lessons.marks(key, Lessons.answer(key, Answers.vet(model, "now", List.of())));
    assertThat(marks.capped()).isFalse();
    ReferralGiven first = key.feet().values().iterator().next().foot().referrals().get(0);
    assertThat(marks.critique().feet().get(0).points())
        .anyMatch(
            point -> point.subject().equals(first.id()) && point.verdict() == PointVerdict.MISSED);
  }
}
