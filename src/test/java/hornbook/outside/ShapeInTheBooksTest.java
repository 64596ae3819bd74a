package hornbook.outside;

import static hornbook.outside.Yard.has;
import static org.assertj.core.api.Assertions.assertThat;

import hornbook.advice.FindingGiven;
import hornbook.advice.FootAdvice;
import hornbook.advice.Verdict;
import hornbook.rulebook.fact.Bearing;
import hornbook.rulebook.fact.Limit;
import hornbook.rules.Shipped;
import org.junit.jupiter.api.Test;

/**
 * What the United States Department of Agriculture's Special Report of 1916 says of axis, form,
 * wear, fit, frog and bars (Adams on shoeing, Holcombe on the foot), compared with the advice.
 */
class ShapeInTheBooksTest {

  /** Gross anatomy: pastern flatter than the toe; lower the heels, spare the toe. */
  @Test
  void an_axis_broken_forward_lowers_the_heels() {
    FootAdvice foot = foot("right-fore", "measures: {toeAngle: 57, pasternAngle: 50}");
    assertThat(says(foot, "broken-forward"))
        .contains("Lower the heels", "in small steps", "take nothing off the toe");
    assertThat(foot.referrals()).isEmpty();
    assertThat(foot.support("heel-wedge").verdict()).isEqualTo(Verdict.NOT_INDICATED);
  }

  /** Gross anatomy: toe flatter than the pastern; shorten the toe, spare the heels. */
  @Test
  void an_axis_broken_back_shortens_the_toe() {
    FootAdvice foot = foot("left-fore", "measures: {toeAngle: 44, pasternAngle: 50}");
    assertThat(says(foot, "broken-back")).contains("Shorten the toe", "spare the heels");
  }

  /**
   * The shoe, length: an upright foot with a straight axis has branches of an eighth of an inch.
   */
  @Test
  void an_upright_foot_has_short_branches() {
    FootAdvice foot = foot("right-fore", "measures: {toeAngle: 58, pasternAngle: 58}");
    assertThat(says(foot, "upright-foot")).isNotEmpty();
    assertThat(foot.support("longer-branch").verdict()).isEqualTo(Verdict.RULED_OUT);
    assertThat(limit("branch.upright").value() / 25.4).isBetween(0.12, 0.13);
  }

  /** The shoe, length: an acute foot has branches of nearly twice the thickness of the shoe. */
  @Test
  void an_acute_foot_has_long_branches() {
    FootAdvice foot = foot("right-fore", "measures: {toeAngle: 43, pasternAngle: 43}");
    assertThat(foot.support("longer-branch").verdict()).isEqualTo(Verdict.WORKABLE);
    assertThat(foot.support("rolled-toe").verdict()).isEqualTo(Verdict.WORKABLE);
    assertThat(limit("branch.acute").value()).isEqualTo(2);
  }

  /** Fitting: a foot of the regular form asks for branches of equal length and nothing more. */
  @Test
  void a_regular_foot_is_shod_plain() {
    FootAdvice foot =
        foot("left-fore", "measures: {toeAngle: 48, pasternAngle: 48}, stance: straight");
    assertThat(says(foot, "straight-axis")).isNotEmpty();
    assertThat(foot.findings()).hasSize(1);
    assertThat(foot.supports()).allMatch(one -> one.verdict() == Verdict.NOT_INDICATED);
    assertThat(limit("branch.regular").value()).isEqualTo(1);
  }

  /**
   * Examination: the pastern line over the outer toe wants the inner wall lowered, not the outer.
   */
  @Test
  void a_line_over_the_outer_toe_lowers_the_inner_wall() {
    FootAdvice foot = foot("right-fore", "pasternLine: outer-toe");
    assertThat(says(foot, "axis-broken-outward"))
        .contains("Lower the inner wall", "do not lower the outer");
  }

  /** Examination: the pastern line over the inner toe wants the outer wall lowered. */
  @Test
  void a_line_over_the_inner_toe_lowers_the_outer_wall() {
    FootAdvice foot = foot("right-fore", "pasternLine: inner-toe");
    assertThat(says(foot, "axis-broken-inward"))
        .contains("Lower the outer wall", "do not lower the inner");
  }

  /**
   * Examination: a thin inner branch means the inner wall is high, or the branch set too near in.
   */
  @Test
  void a_thin_inner_branch_suspects_the_inner_wall() {
    String says = says(foot("left-hind", "oldShoeWear: inside"), "inner-branch-worn");
    assertThat(says.indexOf("inner wall too high")).isNotNegative();
    assertThat(says.indexOf("near the midline")).isGreaterThan(says.indexOf("inner wall too high"));
    assertThat(says).contains("Check the axis from in front");
  }

  /** Fitting: base-wide is fitted full inside and close outside. */
  @Test
  void a_base_wide_limb_is_fitted_full_inside() {
    assertThat(says(foot("left-fore", "stance: base-wide"), "weight-on-inner-half"))
        .contains(
            "inner branch full", "outer close", "Inner nails forward", "outer nails well back");
  }

  /** Fitting: base-narrow is fitted full and a little longer outside, close inside. */
  @Test
  void a_base_narrow_limb_is_fitted_full_outside() {
    FootAdvice foot = foot("right-fore", "stance: base-narrow");
    assertThat(says(foot, "weight-on-outer-half"))
        .contains("outer branch full and a little longer", "inner close")
        .contains("Do not fit the inner branch full");
    assertThat(foot.support("longer-branch").verdict()).isEqualTo(Verdict.WORKABLE);
  }

  /** Preparing the hoof: of the frog only loose tags come off. */
  @Test
  void a_frog_loses_only_its_tags() {
    FootAdvice foot =
        foot("left-fore", "measures: {frogLength: 80, frogWidth: 50}, signs: {frogState: healthy}");
    assertThat(says(foot, "contracted-heels")).contains("only loose tags");
    assertThat(foot.support("frog-support").verdict()).isEqualTo(Verdict.WORKABLE);
  }

  /** Preparing the hoof: bars from the ground face, the seat of corn left below the wall. */
  @Test
  void bars_are_shortened_from_below_and_the_seat_of_corn_stays_low() {
    assertThat(says(foot("right-fore", "signs: {stain: corn-seat}"), "corn"))
        .contains("ground face only", "never from their sides", "below the wall");
  }

  /** Movements of the hoof: no frog pressure between ossified cartilages. */
  @Test
  void hard_cartilages_bear_no_frog_pressure() {
    FootAdvice foot = foot("left-fore", "signs: {cartilages: hard, frogState: healthy}");
    assertThat(foot.support("frog-support").verdict()).isEqualTo(Verdict.RULED_OUT);
    assertThat(foot.support("heart-bar").verdict()).isEqualTo(Verdict.RULED_OUT);
  }

  /** The bar shoe: for a frog shrunken from disuse. */
  @Test
  void a_bar_shoe_wakes_a_shrunken_frog() {
    FootAdvice foot =
        foot("left-fore", "measures: {frogLength: 80, frogWidth: 40}, signs: {frogState: wasted}");
    assertThat(has(foot.support("straight-bar"), Bearing.FOR)).isTrue();
  }

  /** Navicular disease: load on a frog that hurts makes the horse far lamer. */
  @Test
  void a_frog_that_hurts_is_not_loaded() {
    FootAdvice foot =
        foot(
            "left-fore",
            "measures: {toeLength: 96, heelLength: 30}, signs: {testerPain: [frog], frogState: healthy}");
    assertThat(foot.support("frog-support").verdict()).isEqualTo(Verdict.WITH_VET);
    assertThat(foot.support("straight-bar").verdict()).isEqualTo(Verdict.WITH_VET);
  }

  /** Faults of conformation: of a flat foot neither heels nor frog are pared away. */
  @Test
  void a_flat_foot_keeps_its_horn() {
    assertThat(says(foot("left-fore", "signs: {soleShape: flat}"), "flat-sole"))
        .contains(
            "spare sole and frog",
            "no more off the heels than the axis asks",
            "the wall carries it");
  }

  private static FootAdvice foot(String limb, String seen) {
    return Yard.advise("feet: [{limb: %s, lameness: 0, %s}]".formatted(limb, seen));
  }

  private static String says(FootAdvice foot, String finding) {
    return foot.findings().stream()
        .filter(one -> one.id().equals(finding))
        .map(FindingGiven::says)
        .map(says -> says.template())
        .findFirst()
        .orElse("");
  }

  private static Limit limit(String id) {
    return Shipped.BOOK.limits().stream()
        .filter(one -> one.id().equals(id))
        .findFirst()
        .orElseThrow();
  }
}
