package hornbook.outside;

import static hornbook.outside.Yard.cautions;
import static hornbook.outside.Yard.crack;
import static hornbook.outside.Yard.has;
import static hornbook.outside.Yard.says;
import static org.assertj.core.api.Assertions.assertThat;

import hornbook.advice.FootAdvice;
import hornbook.advice.Verdict;
import hornbook.rulebook.fact.Bearing;
import hornbook.rulebook.fact.Urgency;
import org.junit.jupiter.api.Test;

/** What the books and papers say of cracks, compared with the advice. */
class CracksInTheBooksTest {
  private static final String STILL = ", depth: superficial, bleeds: false, moves: false";

  /** USDA 1916, Adams, growth of the hoof: 11 to 13 months from the coronet at the toe. */
  @Test
  void a_toe_crack_takes_eleven_to_thirteen_months() {
    FootAdvice foot = crack("left-hind", "place: toe, starts: coronet" + STILL);
    assertThat(says(foot, "renewal-at-toe")).contains("11 to 13 months");
    assertThat(cautions(foot)).doesNotContain("renewal-at-side", "renewal-at-heel");
  }

  /** Lungwitz 1913, growth: 6 to 8 months from the coronet at the side. */
  @Test
  void a_side_crack_takes_six_to_eight_months() {
    FootAdvice foot = crack("left-fore", "place: side, starts: coronet" + STILL);
    assertThat(says(foot, "renewal-at-side")).contains("6 to 8 months");
  }

  /** USDA 1916, Adams, growth of the hoof: 3 to 5 months from the coronet at the heel. */
  @Test
  void a_heel_crack_takes_three_to_five_months() {
    FootAdvice foot = crack("right-fore", "place: heel, side: medial, starts: coronet" + STILL);
    assertThat(says(foot, "renewal-at-heel")).contains("3 to 5 months");
    assertThat(cautions(foot)).doesNotContain("renewal-at-toe");
  }

  /** USDA 1916, Holcombe, sand cracks: big nails near the heels help to split a quarter. */
  @Test
  void nails_far_back_help_to_split_a_quarter() {
    String quarter = "place: quarter, side: medial, starts: coronet" + STILL;
    FootAdvice nailed =
        Yard.advise(
            "feet: [{limb: left-fore, lameness: 0, shoeing: nailed, cracks: [{" + quarter + "}]}]");
    assertThat(cautions(nailed)).contains("nails-far-back");
    assertThat(says(nailed, "nails-far-back")).contains("forward").contains("smaller");
    assertThat(nailed.referrals()).isEmpty();
    assertThat(cautions(crack("left-fore", quarter))).doesNotContain("nails-far-back");
  }

  /** USDA 1916, Holcombe, sand cracks: still the edges of a moving quarter crack; bar shoe. */
  @Test
  void a_moving_quarter_crack_goes_to_the_vet_and_gets_a_bar() {
    FootAdvice foot =
        Yard.advise(
            "feet: [{limb: left-fore, lameness: 1, cracks: [{place: quarter, side: medial,"
                + " starts: full, depth: deep, bleeds: false, moves: true}]}]");
    assertThat(foot.urgency()).contains(Urgency.DAYS);
    assertThat(has(foot.support("straight-bar"), Bearing.FOR)).isTrue();
    assertThat(foot.technique("prosthetic-wall").verdict()).isEqualTo(Verdict.RULED_OUT);
    assertThat(foot.firstChoice()).isEmpty();
  }

  /** Reeks 1906, ch. VII A: two side clips, the bearing eased, no high heels; nothing thickened. */
  @Test
  void a_toe_crack_has_a_clip_each_side_and_is_eased() {
    FootAdvice foot =
        crack("right-hind", "place: toe, starts: full, depth: deep, bleeds: false, moves: true");
    assertThat(has(foot.support("clips"), Bearing.FOR)).isTrue();
    assertThat(has(foot.support("float-wall"), Bearing.FOR)).isTrue();
    assertThat(has(foot.support("heel-wedge"), Bearing.AGAINST)).isTrue();
    assertThat(has(foot.support("straight-bar"), Bearing.FOR)).isFalse();
  }

  /** Lungwitz 1913 eases the bearing, Hunting 1895 keeps it firm behind: both are shown. */
  @Test
  void both_views_of_the_bearing_behind_a_quarter_crack_are_shown() {
    FootAdvice foot = crack("left-fore", "place: quarter, side: lateral, starts: coronet" + STILL);
    var floated = foot.support("float-wall");
    assertThat(floated.reasons())
        .anySatisfy(
            reason -> {
              assertThat(reason.bearing()).isEqualTo(Bearing.FOR);
              assertThat(reason.sources()).contains("lungwitz-1913");
            })
        .anySatisfy(
            reason -> {
              assertThat(reason.bearing()).isEqualTo(Bearing.AGAINST);
              assertThat(reason.sources()).contains("hunting-1895");
            });
  }

  /** O'Grady 2010: a quarter crack that bleeds is seen by a vet before it is patched. */
  @Test
  void nothing_is_bonded_over_a_bleeding_crack() {
    FootAdvice foot =
        crack("left-fore", "place: quarter, side: medial, starts: coronet, bleeds: true");
    assertThat(foot.urgency()).contains(Urgency.TODAY);
    assertThat(foot.technique("prosthetic-wall").verdict()).isEqualTo(Verdict.RULED_OUT);
    assertThat(foot.technique("cast-wrap").verdict()).isEqualTo(Verdict.RULED_OUT);
    assertThat(foot.technique("glue-on").verdict()).isNotIn(Verdict.WORKABLE, Verdict.FIRST_CHOICE);
  }

  /** O'Grady and Castelijns 2011: look for the heel that was pushed up under a quarter crack. */
  @Test
  void a_quarter_crack_asks_for_the_heel_bulbs() {
    FootAdvice foot = crack("left-fore", "place: quarter, side: medial, starts: coronet" + STILL);
    assertThat(cautions(foot)).contains("look-for-sheared-heel");
    assertThat(foot.questions())
        .anyMatch(question -> question.field().equals("feet[0].measures.medialHeelHeight"));
  }

  /** Carter and Maki 2010: a simple low crack asks for trimming and shoeing only. */
  @Test
  void a_low_surface_crack_is_trimmed() {
    FootAdvice foot =
        Yard.advise(
            "horse: {ageYears: 8, work: light}\n"
                + "feet: [{limb: left-fore, lameness: 0, shoeing: unshod, cracks: [{place: side,"
                + " side: lateral, starts: ground"
                + STILL
                + "}]}]");
    assertThat(foot.referrals()).isEmpty();
    assertThat(foot.firstChoice()).map(one -> one.id()).contains("leave-unshod");
    assertThat(has(foot.support("float-wall"), Bearing.FOR)).isTrue();
  }
}
