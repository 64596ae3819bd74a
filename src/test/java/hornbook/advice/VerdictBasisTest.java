package hornbook.advice;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.advice.VerdictBasis.By;
import hornbook.assessment.Limb;
import hornbook.rulebook.fact.Basis;
import hornbook.rulebook.fact.Bearing;
import hornbook.rulebook.fact.Finding;
import hornbook.rulebook.fact.Seen;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Why a workable technique is not the first choice: the first of the reasons that holds. */
class VerdictBasisTest {
  private static final OptionAdvice FIRST =
      option("nail-on", Verdict.FIRST_CHOICE, reason(Bearing.FOR, "long-toe"));

  private static ReasonGiven reason(Bearing bearing, String finding) {
    return new ReasonGiven(
        bearing,
        "N001",
        new Statement("says", Map.of()),
        null,
        null,
        false,
        List.of(Finding.of(finding, new Seen("a", "yes", "feet[0].a"))),
        List.of(),
        Basis.PRACTICE,
        null);
  }

  private static OptionAdvice option(String id, Verdict verdict, ReasonGiven... reasons) {
    return new OptionAdvice(id, verdict, List.of(reasons));
  }

  private static VerdictBasis of(OptionAdvice judged, OptionAdvice... others) {
    List<OptionAdvice> techniques = new ArrayList<>(List.of(others));
    techniques.add(judged);
    FindingGiven defect = finding("long-toe", true);
    FindingGiven noDefect = finding("hard-ground", false);
    return VerdictBasis.of(
        new FootAdvice(
            Limb.LEFT_FORE,
            0,
            false,
            List.of(),
            List.of(defect, noDefect),
            List.of(),
            List.copyOf(techniques),
            List.of(),
            List.of(),
            List.of(),
            null,
            List.of()),
        judged);
  }

  private static FindingGiven finding(String id, boolean defect) {
    return new FindingGiven(
        id, defect, "S001", new Statement("says", Map.of()), List.of(), List.of());
  }

  @Test
  void a_defect_is_left_unanswered() {
    OptionAdvice judged = option("glue-on", Verdict.WORKABLE, reason(Bearing.FOR, "hard-ground"));
    assertThat(of(judged, FIRST)).isEqualTo(new VerdictBasis(By.DEFECT_LEFT, List.of("long-toe")));
  }

  @Test
  void nothing_is_first_choice_while_the_vet_is_awaited() {
    OptionAdvice judged = option("dry-bandage", Verdict.WORKABLE, reason(Bearing.FOR, "long-toe"));
    assertThat(of(judged)).isEqualTo(new VerdictBasis(By.VET_AWAITED, List.of()));
  }

  private static OptionAdvice spokenAgainst(String id, Verdict verdict) {
    return option(
        id, verdict, reason(Bearing.FOR, "long-toe"), reason(Bearing.AGAINST, "hard-ground"));
  }

  @Test
  void something_is_against_it_and_nothing_against_the_first_choice() {
    OptionAdvice judged = spokenAgainst("glue-on", Verdict.WORKABLE);
    assertThat(of(judged, FIRST))
        .isEqualTo(new VerdictBasis(By.SPOKEN_AGAINST, List.of("nail-on")));
  }

  @Test
  void else_the_first_choice_interferes_less() {
    VerdictBasis another = new VerdictBasis(By.ANOTHER_FIRST, List.of("nail-on"));
    OptionAdvice alike = spokenAgainst("glue-on", Verdict.WORKABLE);
    assertThat(of(alike, spokenAgainst("nail-on", Verdict.FIRST_CHOICE))).isEqualTo(another);
    OptionAdvice judged = option("glue-on", Verdict.WORKABLE, reason(Bearing.FOR, "long-toe"));
    assertThat(of(judged, FIRST)).isEqualTo(another);
  }

  @Test
  void other_verdicts_settle_themselves() {
    assertThat(of(FIRST).by()).isEqualTo(By.COMES_FIRST);
    assertThat(of(option("a", Verdict.RULED_OUT)).by()).isEqualTo(By.RULED_OUT);
    assertThat(of(option("a", Verdict.WITH_VET)).by()).isEqualTo(By.VET_FIRST);
    assertThat(of(option("a", Verdict.NOT_INDICATED)).by()).isEqualTo(By.NOTHING_FOR);
  }
}
