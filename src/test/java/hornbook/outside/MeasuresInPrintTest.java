package hornbook.outside;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.advice.FindingGiven;
import hornbook.advice.FootAdvice;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What published definitions call a foot, compared with the names the rules give it. */
class MeasuresInPrintTest {

  /** Turner 1992: the heel is under-run from 5 degrees below the toe. */
  @ParameterizedTest
  @CsvSource({"52, 46, true", "52, 47, true", "52, 48, false"})
  void under_run_heels(int toe, int heel, boolean found) {
    assertFound(measured("toeAngle: %d, heelAngle: %d", toe, heel), "under-run-heels", found);
  }

  /** Turner 1992, Stashak 7th ed. p. 1099: contracted under 67 per cent of the frog's length. */
  @ParameterizedTest
  @CsvSource({"60, 40, true", "60, 41, false"})
  void contracted_heels(int length, int width, boolean found) {
    assertFound(
        measured("frogLength: %d, frogWidth: %d", length, width), "contracted-heels", found);
  }

  /** O'Grady and Castelijns 2011: sheared from 5 mm between the heel bulbs. */
  @ParameterizedTest
  @CsvSource({
    "41, 46, true, outer-heel-raised, inner-heel-raised",
    "46, 41, true, inner-heel-raised, outer-heel-raised",
    "41, 45, false, none, inner-heel-raised"
  })
  void sheared_heels(int medial, int lateral, boolean found, String raised, String lower) {
    FootAdvice foot = measured("medialHeelHeight: %d, lateralHeelHeight: %d", medial, lateral);
    assertFound(foot, "sheared-heels", found);
    assertFound(foot, raised, found);
    assertFound(foot, lower, false);
  }

  /** Wiggers and others 2015: flat under 50 degrees, medium from 50 to 55, upright over 55. */
  @ParameterizedTest
  @CsvSource({"49.9, false", "50, false", "52.5, false", "55, false", "55.1, true"})
  void upright_feet(double toe, boolean upright) {
    FootAdvice foot =
        Yard.advise("feet: [{limb: left-fore, measures: {toeAngle: %s}}]".formatted(toe));
    assertFound(foot, "upright-foot", upright);
  }

  /** Wiggers and others 2015: a pair is uneven when the toe angles differ by more than 1.5. */
  @ParameterizedTest
  @CsvSource({"51.4, false", "51.6, true"})
  void uneven_pairs(double other, boolean uneven) {
    assertFound(pair(50, other), "uneven-pair", uneven);
    assertFound(pair(other, 50), "uneven-pair", uneven);
  }

  /** Equus, October 2014: the first grade from three, the second from five to about eight. */
  @ParameterizedTest
  @CsvSource({
    "2, none",
    "3, club-foot-grade-1",
    "4, club-foot-grade-1",
    "6, club-foot-grade-2",
    "8, club-foot-grade-2",
    "9, none"
  })
  void grades_of_club_foot(int steeper, String grade) {
    FootAdvice foot = pair(50 + steeper, 50);
    for (String one : List.of("club-foot-grade-1", "club-foot-grade-2")) {
      assertFound(foot, one, one.equals(grade));
    }
    assertThat(foot.referrals().stream().anyMatch(one -> one.id().equals("steep-club-foot")))
        .isEqualTo(steeper > 8);
  }

  /** Dyson and others 2011: no more than 3 to 1 in front. */
  @ParameterizedTest
  @CsvSource({"90, 30, false", "91, 30, true"})
  void low_heels(int toe, int heel, boolean found) {
    assertFound(measured("toeLength: %d, heelLength: %d", toe, heel), "low-heels", found);
  }

  private static FootAdvice measured(String measures, Object... values) {
    return Yard.advise(
        "feet: [{limb: left-fore, measures: {%s}}]".formatted(measures.formatted(values)));
  }

  private static FootAdvice pair(double own, double other) {
    return Yard.advise(
        "feet: [{limb: left-fore, measures: {toeAngle: %s}}, {limb: right-fore, measures: {toeAngle: %s}}]"
            .formatted(own, other));
  }

  private static void assertFound(FootAdvice foot, String finding, boolean found) {
    List<String> findings = foot.findings().stream().map(FindingGiven::id).toList();
    assertThat(findings.contains(finding)).as(finding + " among " + findings).isEqualTo(found);
  }
}
