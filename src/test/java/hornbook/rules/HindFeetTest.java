package hornbook.rules;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.advice.FindingGiven;
import hornbook.advice.FootAdvice;
import hornbook.assessment.read.AssessmentReader;
import hornbook.assessment.read.ReadResult;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Limits that differ between fore and hind feet turn where each of the two entries says. */
class HindFeetTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "left-fore | toeAngle: 44, pasternAngle: 44 | acute-foot | true",
        "left-fore | toeAngle: 45, pasternAngle: 45 | acute-foot | false",
        "left-hind | toeAngle: 49, pasternAngle: 49 | acute-foot | true",
        "left-hind | toeAngle: 50, pasternAngle: 50 | acute-foot | false",
        "left-fore | toeAngle: 56, pasternAngle: 56 | upright-foot | true",
        "left-fore | toeAngle: 55, pasternAngle: 55 | upright-foot | false",
        "left-hind | toeAngle: 61, pasternAngle: 61 | upright-foot | true",
        "left-hind | toeAngle: 60, pasternAngle: 60 | upright-foot | false",
        "left-fore | toeLength: 93, heelLength: 30 | low-heels | true",
        "left-fore | toeLength: 90, heelLength: 30 | low-heels | false",
        "left-hind | toeLength: 93, heelLength: 30 | low-heels | true",
        "left-hind | toeLength: 90, heelLength: 30 | low-heels | false",
        "left-fore | bearingLength: 100, toeToWidest: 56 | toe-forward | true",
        "left-fore | bearingLength: 100, toeToWidest: 55 | toe-forward | false",
        "left-hind | bearingLength: 100, toeToWidest: 73 | toe-forward | true",
        "left-hind | bearingLength: 100, toeToWidest: 72 | toe-forward | false",
        "left-hind | toeAngle: 55, heelAngle: 50 | under-run-heels | true",
        "left-hind | toeAngle: 55, heelAngle: 51 | under-run-heels | false",
      })
  void a_finding_turns_at_the_limit_of_its_limb(
      String limb, String measures, String finding, boolean found) {
    assertThat(findings("{limb: %s, measures: {%s}}".formatted(limb, measures)).contains(finding))
        .isEqualTo(found);
  }

  @ParameterizedTest
  @CsvSource({"54, 52.4, true", "54, 52.5, false"})
  void a_hind_pair_is_uneven_past_its_limit(double left, double right, boolean uneven) {
    String feet =
        "{limb: left-hind, measures: {toeAngle: %s}}, {limb: right-hind, measures: {toeAngle: %s}}"
            .formatted(left, right);
    assertThat(findings(feet).contains("uneven-pair")).isEqualTo(uneven);
  }

  /** A foal has its own proportions: what names a grown foot is silent on it. */
  @ParameterizedTest
  @CsvSource({"200, false", "400, true"})
  void foals_are_not_held_to_the_shape_of_grown_feet(int days, boolean found) {
    String file =
        """
        format: hornbook-assessment/1
        horse: {ageDays: %d}
        feet: [{limb: left-fore, measures: {toeAngle: 58, heelAngle: 50, toeLength: 70, heelLength: 20}}]
        """
            .formatted(days);
    List<String> findings = of(file);
    assertThat(findings.contains("under-run-heels")).isEqualTo(found);
    assertThat(findings.contains("low-heels")).isEqualTo(found);
    assertThat(findings.contains("upright-foot")).isEqualTo(found);
  }

  /** Lungwitz has the regular hind foot 5 degrees steeper than the regular fore foot, p. 73. */
  @ParameterizedTest
  @CsvSource({
    "left-fore, 60, false",
    "left-fore, 61, true",
    "left-hind, 65, false",
    "left-hind, 66, true",
  })
  void a_vet_looks_at_an_upright_hoof_past_the_limit_of_its_limb(
      String limb, int angle, boolean referred) {
    String feet = "feet: [{limb: %s, measures: {toeAngle: %d}}]\n".formatted(limb, angle);
    assertThat(
            advised("format: hornbook-assessment/1\n" + feet).referrals().stream()
                .anyMatch(one -> one.id().equals("upright-hoof")))
        .isEqualTo(referred);
  }

  private static List<String> findings(String feet) {
    return of("format: hornbook-assessment/1\nfeet: [" + feet + "]\n");
  }

  private static List<String> of(String file) {
    return advised(file).findings().stream().map(FindingGiven::id).toList();
  }

  private static FootAdvice advised(String file) {
    ReadResult read =
        AssessmentReader.read(file.getBytes(StandardCharsets.UTF_8), "hind feet", List.of());
    assertThat(read).isInstanceOf(ReadResult.Good.class);
    return Shipped.ADVISOR.advise(((ReadResult.Good) read).assessment()).feet().get(0);
  }
}
