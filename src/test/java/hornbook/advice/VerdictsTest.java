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
import org.junit.jupiter.api.Test;

/** The order in which reasons become verdicts, as the contributors' guide states it. */
class VerdictsTest {
  private static final Verdicts NOBODY_CALLED = new Verdicts(null, false, Set.of());

  @Test
  void one_reason_that_rules_out_settles_it() {
    assertThat(NOBODY_CALLED.verdict(of(Bearing.FOR, Bearing.RULES_OUT)))
        .isEqualTo(Verdict.RULED_OUT);
  }

  @Test
  void a_referral_now_rules_all_out_until_the_vet_directs() {
    assertThat(new Verdicts(Urgency.NOW, false, Set.of()).verdict(of(Bearing.FOR)))
        .isEqualTo(Verdict.RULED_OUT);
    assertThat(new Verdicts(Urgency.NOW, true, Set.of()).verdict(of(Bearing.FOR)))
        .isEqualTo(Verdict.WITH_VET);
  }

  @Test
  void a_referral_today_leaves_what_is_spoken_for_to_the_vet() {
    Verdicts today = new Verdicts(Urgency.TODAY, false, Set.of());
    assertThat(today.verdict(of(Bearing.FOR))).isEqualTo(Verdict.WITH_VET);
    assertThat(today.verdict(of(Bearing.AGAINST))).isEqualTo(Verdict.NOT_INDICATED);
  }

  @Test
  void a_referral_within_days_does_not_stop_the_farrier() {
    assertThat(new Verdicts(Urgency.DAYS, false, Set.of()).verdict(of(Bearing.FOR)))
        .isEqualTo(Verdict.WORKABLE);
  }

  @Test
  void a_need_of_the_vet_leaves_it_to_the_vet_and_one_of_the_farrier_does_not() {
    assertThat(NOBODY_CALLED.verdict(of(Bearing.FOR, Bearing.NEEDS_VET)))
        .isEqualTo(Verdict.WITH_VET);
    assertThat(NOBODY_CALLED.verdict(of(Bearing.FOR, Bearing.NEEDS))).isEqualTo(Verdict.WORKABLE);
  }

  @Test
  void what_nothing_speaks_for_is_not_indicated() {
    assertThat(NOBODY_CALLED.verdict(List.of())).isEqualTo(Verdict.NOT_INDICATED);
    assertThat(NOBODY_CALLED.verdict(of(Bearing.NEEDS_VET))).isEqualTo(Verdict.NOT_INDICATED);
  }

  @Test
  void the_least_intervention_that_answers_every_defect_comes_first() {
    Verdicts verdicts = new Verdicts(null, false, Set.of("wall-lost", "shoe-needed"));
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
    Verdicts verdicts = new Verdicts(null, false, Set.of("wall-lost"));
    List<OptionAdvice> judged =
        verdicts.withFirstChoice(
            List.of(
                workable("nail-on-adapted", answer("wall-lost"), reason(Bearing.AGAINST)),
                workable("glue-on", answer("wall-lost"))));
    assertThat(verdictsOf(judged)).containsEntry("glue-on", Verdict.FIRST_CHOICE);
  }

  @Test
  void where_no_technique_answers_every_defect_none_comes_first() {
    Verdicts verdicts = new Verdicts(null, false, Set.of("wall-lost", "weak-crack"));
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
