package hornbook.assessment.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hornbook.assessment.Assessment;
import hornbook.assessment.Read;
import hornbook.assessment.WallState;
import hornbook.assessment.field.FieldRows;
import hornbook.assessment.field.FieldValue;
import hornbook.assessment.field.Fields;
import hornbook.assessment.word.DigitalPulse;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class AssessmentEditTest {
  private static final Assessment FULL = Read.good(Read.full());

  @Test
  void changesOneFieldAndLeavesTheRest() {
    AssessmentEdit pulse = AssessmentEdit.of("feet[0].signs.digitalPulse");
    Assessment changed = pulse.with(FULL, DigitalPulse.BOUNDING);

    assertThat(pulse.value(FULL)).isEqualTo(DigitalPulse.NORMAL);
    assertThat(changed).isEqualTo(Read.good(Read.full(), "feet[0].signs.digitalPulse=bounding"));
    assertThat(pulse.with(changed, DigitalPulse.NORMAL)).isEqualTo(FULL);
    assertThat(pulse.field()).isSameAs(Fields.ofFoot("signs.digitalPulse"));
  }

  /** A change of records and a setting of the file come to the same. */
  @ParameterizedTest
  @CsvSource({
    "feet[0].measures.toeAngle, 51",
    "feet[0].wall[1].to, 140",
    "horse.weight, 512.5",
    "kit.shoeSizes[1].width, 130"
  })
  void doesWhatASettingDoes(String path, double value) {
    assertThat(AssessmentEdit.of(path).with(FULL, value))
        .isEqualTo(Read.good(Read.full(), path + "=" + value));
  }

  /** Each field set to what it holds, and to unknown, through its own path. */
  @Test
  void reachesEveryFieldThatIsListed() {
    Fields.values(FULL)
        .forEach(
            known -> {
              AssessmentEdit edit = AssessmentEdit.of(known.path());
              assertThat(edit.value(FULL)).as(known.path()).isEqualTo(known.value());
              assertThat(edit.with(FULL, known.value())).isEqualTo(FULL);
              assertThat(edit.value(edit.with(FULL, null))).as(known.path()).isNull();
            });
  }

  @Test
  void listsEveryFieldWithItsPathAndValue() {
    Map<String, Object> known =
        Fields.values(FULL)
            .filter(value -> value.value() != null)
            .collect(Collectors.toMap(FieldValue::path, FieldValue::value));
    assertThat(known)
        .containsEntry("horse.name", "Tansy")
        .containsEntry("feet[0].measures.toeLength", 96.0)
        .containsEntry("feet[0].wall[2].state", WallState.BROKEN_AWAY)
        .containsEntry("feet[0].cracks[0].bleeds", false)
        .containsEntry("feet[0].signs.testerPain", List.of())
        .containsEntry("kit.shoeSizes[0].label", "1")
        .doesNotContainKeys("format", "feet", "feet[0].signs.crushed");
    assertThat(Fields.values(FULL)).extracting(FieldValue::path).contains("feet[0].signs.crushed");
  }

  @Test
  void listsOneFootTheSame() {
    List<FieldValue> foot = Fields.values(FULL.feet().get(0), 0).toList();
    assertThat(Fields.values(FULL).filter(value -> value.path().startsWith("feet")).toList())
        .isEqualTo(foot);
    assertThat(Fields.values(FULL.feet().get(0), 2))
        .extracting(FieldValue::path)
        .contains("feet[2].wall[3].to");
  }

  @Test
  void listsRowsThatAreNotThereAsUnknown() {
    Assessment bare = Read.good(Read.foot("lameness: 1"));
    assertThat(Fields.values(bare))
        .filteredOn(value -> value.field().kind() instanceof FieldRows)
        .extracting(FieldValue::path, FieldValue::value)
        .containsExactly(
            org.assertj.core.groups.Tuple.tuple("feet[0].wall", null),
            org.assertj.core.groups.Tuple.tuple("feet[0].cracks", null),
            org.assertj.core.groups.Tuple.tuple("kit.shoeSizes", null));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "horse",
        "format",
        "feet[0]",
        "feet[0].wall[0]",
        "horse.mane",
        "feet[left-fore].lameness",
        "feet.lameness",
        "horse[0].name",
        "feet[0].measures"
      })
  void knowsNoOtherFields(String path) {
    assertThatThrownBy(() -> AssessmentEdit.of(path)).isInstanceOf(IllegalArgumentException.class);
  }

  @Test
  void refusesValuesOfAnotherTypeAndRowsThatAreNotThere() {
    AssessmentEdit angle = AssessmentEdit.of("feet[0].measures.toeAngle");
    AssessmentEdit row = AssessmentEdit.of("feet[0].wall[7].to");
    assertThatThrownBy(() -> angle.with(FULL, 51)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> row.with(FULL, 51.0)).isInstanceOf(IllegalArgumentException.class);
    assertThat(row.value(FULL)).isNull();
  }
}
