package hornbook.advice;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.rulebook.fact.Basis;
import hornbook.rulebook.fact.Bearing;
import hornbook.rulebook.fact.CitedFact;
import hornbook.rulebook.fact.Finding;
import hornbook.rulebook.fact.Urgency;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;

/** The order in which reasons become verdicts, as the contributors' guide states it. */
class VerdictsTest {
  private static final Predicate<String> FIRST_AID = "dry-bandage"::equals;

  private static final Verdicts NOBODY_CALLED = new Verdicts(null, false, Set.of(), FIRST_AID);

  @Test
  void one_reason_that_rules_out_settles_it() {
    assertThat(NOBODY_CALLED.verdict("glue-on", of(Bearing.FOR, Bearing.RULES_OUT)))
        .isEqualTo(Verdict.RULED_OUT);
  }

  @Test
  void a_referral_now_rules_all_out_until_the_vet_directs() {
    assertThat(
            new Verdicts(Urgency.NOW, false, Set.of(), FIRST_AID)
                .verdict("glue-on", of(Bearing.FOR)))
        .isEqualTo(Verdict.RULED_OUT);
    assertThat(
            new Verdicts(Urgency.NOW, true, Set.of(), FIRST_AID)
                .verdict("glue-on", of(Bearing.FOR)))
        .isEqualTo(Verdict.WITH_VET);
  }

  @Test
  void a_referral_today_leaves_what_is_spoken_for_to_the_vet() {
    Verdicts today = new Verdicts(Urgency.TODAY, false, Set.of(), FIRST_AID);
    assertThat(today.verdict("glue-on", of(Bearing.FOR))).isEqualTo(Verdict.WITH_VET);
    assertThat(today.verdict("glue-on", of(Bearing.AGAINST))).isEqualTo(Verdict.NOT_INDICATED);
  }

  @Test
  void a_referral_within_days_does_not_stop_the_farrier() {
    assertThat(
            new Verdicts(Urgency.DAYS, false, Set.of(), FIRST_AID)
                .verdict("glue-on", of(Bearing.FOR)))
        .isEqualTo(Verdict.WORKABLE);
  }

  @Test
  void a_need_of_the_vet_leaves_it_to_the_vet_and_one_of_the_farrier_does_not() {
    assertThat(NOBODY_CALLED.verdict("glue-on", of(Bearing.FOR, Bearing.NEEDS_VET)))
        .isEqualTo(Verdict.WITH_VET);
    assertThat(NOBODY_CALLED.verdict("glue-on", of(Bearing.FOR, Bearing.NEEDS)))
        .isEqualTo(Verdict.WORKABLE);
  }

  @Test
  void what_nothing_speaks_for_is_not_indicated() {
    assertThat(NOBODY_CALLED.verdict("glue-on", List.of())).isEqualTo(Verdict.NOT_INDICATED);
    assertThat(NOBODY_CALLED.verdict("glue-on", of(Bearing.NEEDS_VET)))
        .isEqualTo(Verdict.NOT_INDICATED);
  }

  @Test
  void the_least_intervention_that_answers_every_defect_comes_first() {
    Verdicts verdicts = new Verdicts(null, false, Set.of("wall-lost", "shoe-needed"), FIRST_AID);
    List<OptionAdvice> judged =
        verdicts.withFirstChoice(
            List.of(
                workable("nail-on", answer("shoe-needed")),
                workable("nail-on-adapted", answer("shoe-needed"), answer("wall-lost")),
                workable("glue-on", answer("shoe-needed"), answer("wall-lost"))));
    assertThat(verdictsOf(judged))
        .isEqualTo(
            Map.of(
                "nail-on", Verdict.WORKABLE,
                "nail-on-adapted", Verdict.FIRST_CHOICE,
                "glue-on", Verdict.WORKABLE));
  }

  @Test
  void what_is_spoken_against_yields_to_what_is_not() {
    Verdicts verdicts = new Verdicts(null, false, Set.of("wall-lost"), FIRST_AID);
    List<OptionAdvice> judged =
        verdicts.withFirstChoice(
            List.of(
                workable("nail-on-adapted", answer("wall-lost"), reason(Bearing.AGAINST)),
                workable("glue-on", answer("wall-lost"))));
    assertThat(verdictsOf(judged)).containsEntry("glue-on", Verdict.FIRST_CHOICE);
  }

  @Test
  void where_no_technique_answers_every_defect_none_comes_first() {
    Verdicts verdicts = new Verdicts(null, false, Set.of("wall-lost", "weak-crack"), FIRST_AID);
    List<OptionAdvice> judged =
        verdicts.withFirstChoice(List.of(workable("glue-on", answer("wall-lost"))));
    assertThat(verdictsOf(judged)).containsEntry("glue-on", Verdict.WORKABLE);
  }

  @Test
  void only_what_is_workable_can_come_first() {
    List<OptionAdvice> judged =
        NOBODY_CALLED.withFirstChoice(
            List.of(new OptionAdvice("glue-on", Verdict.WITH_VET, of(Bearing.FOR))));
    assertThat(verdictsOf(judged)).containsEntry("glue-on", Verdict.WITH_VET);
  }

  @Test
  void first_aid_is_done_while_the_vet_is_awaited() {
    for (Urgency urgency : List.of(Urgency.NOW, Urgency.TODAY)) {
      Verdicts verdicts = new Verdicts(urgency, false, Set.of(), FIRST_AID);
      assertThat(verdicts.verdict("dry-bandage", of(Bearing.FOR))).isEqualTo(Verdict.WORKABLE);
      assertThat(verdicts.verdict("dry-bandage", of(Bearing.FOR, Bearing.NEEDS_VET)))
          .isEqualTo(Verdict.WITH_VET);
      assertThat(verdicts.verdict("dry-bandage", List.of())).isEqualTo(Verdict.NOT_INDICATED);
    }
  }

  @Test
  void first_aid_lets_every_defect_wait_and_comes_first_but_never_beside_a_call_for_now() {
    List<OptionAdvice> options =
        List.of(
            workable("dry-bandage", reason(Bearing.FOR)), workable("glue-on", answer("wall-lost")));
    Set<String> lost = Set.of("wall-lost");
    assertThat(
            verdictsOf(
                new Verdicts(Urgency.TODAY, false, lost, FIRST_AID).withFirstChoice(options)))
        .containsEntry("dry-bandage", Verdict.FIRST_CHOICE);
    assertThat(
            verdictsOf(new Verdicts(Urgency.NOW, false, lost, FIRST_AID).withFirstChoice(options)))
        .doesNotContainValue(Verdict.FIRST_CHOICE);
  }

  private static Map<String, Verdict> verdictsOf(List<OptionAdvice> judged) {
    return judged.stream()
        .collect(java.util.stream.Collectors.toMap(OptionAdvice::id, OptionAdvice::verdict));
  }

  private static OptionAdvice workable(String id, ReasonGiven... reasons) {
    return new OptionAdvice(id, Verdict.WORKABLE, List.of(reasons));
  }

  private static ReasonGiven answer(String defect) {
    return reason(Bearing.FOR, Finding.of(defect));
  }

  private static List<ReasonGiven> of(Bearing... bearings) {
    return List.of(bearings).stream().map(bearing -> reason(bearing)).toList();
  }

  private static ReasonGiven reason(Bearing bearing, CitedFact... because) {
    return new ReasonGiven(
        bearing,
        "X001",
        new Statement("", Map.of()),
        null,
        null,
        false,
        List.of(because),
        List.of(),
        Basis.PRACTICE,
        null);
  }
}
