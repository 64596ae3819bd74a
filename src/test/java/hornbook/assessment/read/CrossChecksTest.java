package hornbook.assessment.read;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.assessment.Assessment;
import hornbook.assessment.Judged;
import hornbook.assessment.Limb;
import hornbook.assessment.Side;
import hornbook.assessment.VetRole;
import hornbook.assessment.WallCrack;
import hornbook.assessment.WallStretch;
import hornbook.assessment.form.BlankAssessment;
import hornbook.assessment.word.Diagnosis;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A record put together without a file is held to what a file is held to. */
class CrossChecksTest {
  private static final Assessment BLANK = BlankAssessment.of(List.of(Limb.LEFT_FORE));

  private static Assessment with(String path, Object value) {
    return AssessmentEdit.of(path).with(BLANK, value);
  }

  @Test
  void of_a_blank_record_nothing_is_told() {
    assertThat(CrossChecks.first(BLANK)).isEmpty();
  }

  @ParameterizedTest
  @CsvSource({"14.9, false", "15, true", "450, true", "450.1, false"})
  void a_measure_lies_within_its_bounds(double length, boolean fits) {
    assertThat(CrossChecks.first(with("feet[0].measures.bearingLength", length)).isEmpty())
        .isEqualTo(fits);
  }

  @ParameterizedTest
  @CsvSource({"0, true", "5, true", "6, false", "-1, false"})
  void a_whole_number_lies_within_its_bounds(int grade, boolean fits) {
    assertThat(CrossChecks.first(with("feet[0].lameness", grade)).isEmpty()).isEqualTo(fits);
  }

  @Test
  void a_list_has_no_more_rows_than_a_file_may_have() {
    WallCrack crack = new WallCrack(null, null, null, null, null, null, null, null);
    assertThat(CrossChecks.first(with("feet[0].cracks", Collections.nCopies(40, crack)))).isEmpty();
    assertThat(CrossChecks.first(with("feet[0].cracks", Collections.nCopies(41, crack))))
        .hasValueSatisfying(
            one -> {
              assertThat(one.path()).isEqualTo("feet[0].cracks");
              assertThat(one.found()).isEqualTo("a list of 41");
              assertThat(one.allowed()).startsWith("a list of up to 40 groups");
            });
  }

  @Test
  void two_fields_agree() {
    List<WallStretch> backwards =
        List.of(new WallStretch(Side.MEDIAL, 40.0, 30.0, null, null, null, null, null, null, null));
    assertThat(CrossChecks.first(with("feet[0].wall", backwards)))
        .hasValueSatisfying(one -> assertThat(one.path()).isEqualTo("feet[0].wall[0].to"));
  }

  @Test
  void what_a_vet_has_found_a_vet_has_been_told_of() {
    Assessment told = with("visit.vet", VetRole.INFORMED);
    Assessment found = AssessmentEdit.of("feet[0].diagnosis").with(told, Diagnosis.FRACTURE);
    assertThat(CrossChecks.first(found)).isEmpty();
    assertThat(CrossChecks.first(AssessmentEdit.of("visit.vet").with(found, VetRole.NONE)))
        .hasValueSatisfying(one -> assertThat(one.path()).isEqualTo("feet[0].diagnosis"));
  }

  @Test
  void what_a_vet_has_judged_a_vet_has_been_told_of() {
    Assessment told = with("visit.vet", VetRole.INFORMED);
    Assessment judged =
        AssessmentEdit.of("feet[0].care.vetJudged").with(told, List.of(Judged.CRACK));
    assertThat(CrossChecks.first(judged)).isEmpty();
    Assessment nobody = AssessmentEdit.of("visit.vet").with(judged, VetRole.NONE);
    assertThat(CrossChecks.first(nobody))
        .hasValueSatisfying(one -> assertThat(one.path()).isEqualTo("feet[0].care.vetJudged"));
    Assessment nothing = AssessmentEdit.of("feet[0].care.vetJudged").with(nobody, List.of());
    assertThat(CrossChecks.first(nothing)).isEmpty();
  }
}
