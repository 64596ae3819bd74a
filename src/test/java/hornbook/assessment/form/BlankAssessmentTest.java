package hornbook.assessment.form;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.assessment.AnyAssessment;
import hornbook.assessment.Assessment;
import hornbook.assessment.Limb;
import hornbook.assessment.Read;
import hornbook.assessment.Side;
import hornbook.assessment.WallStretch;
import hornbook.assessment.field.Field;
import hornbook.assessment.field.Fields;
import hornbook.assessment.field.FieldsTest;
import hornbook.assessment.quantity.Units;
import hornbook.assessment.read.AssessmentEdit;
import java.util.List;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class BlankAssessmentTest {
  private static final String BLANK =
      BlankAssessment.write(List.of(Limb.LEFT_FORE, Limb.RIGHT_FORE), Units.MM, "schema.json");

  @ParameterizedTest
  @EnumSource(Units.class)
  void isAnAssessmentOfWhichNothingIsKnown(Units units) {
    String blank = BlankAssessment.write(List.of(Limb.LEFT_FORE), units, "schema.json");
    assertThat(Read.good(blank)).isEqualTo(in(units, Read.good(Read.foot("signs: {}"))));
  }

  @Test
  void asksForTheLimbWhereNoneWasNamed() {
    String blank = BlankAssessment.write(List.of(), Units.MM, null);
    assertThat(Read.faults(blank))
        .singleElement()
        .asString()
        .contains("feet[0].limb: found \"unknown\"");
    assertThat(Read.good(blank.replace("limb: unknown", "limb: left-hind"))).isNotNull();
  }

  @Test
  void namesItsSchemaOnTheFirstLine() {
    assertThat(BLANK).startsWith("# yaml-language-server: $schema=schema.json\n");
    assertThat(BlankAssessment.write(List.of(), Units.MM, null)).startsWith("# An assessment");
  }

  @Test
  void hasEveryFieldWithHowToLook() {
    String words = BLANK.replaceAll("\\s*\n\\s*(# )+\\s*", " ");
    for (Field field : FieldsTest.all(Fields.ASSESSMENT)) {
      assertThat(BLANK).containsPattern("(?m)^[ #-]*" + field.name() + ":");
      assertThat(words).contains(field.how());
    }
  }

  @Test
  void staysWithinAHundredColumns() {
    assertThat(BLANK.lines()).allMatch(line -> line.length() <= 100);
  }

  @Test
  void showsWhatMayStandThere() {
    assertThat(BLANK)
        .contains(
            """
                  # Toe length. Middle of the toe, coronary band to ground, along the wall.
                  toeLength: unknown  # such as 90 mm
            """)
        .contains("      digitalPulse: unknown  # normal | raised | bounding\n")
        .contains("      hoofHeat: unknown  # yes | no\n");
    assertThat(BlankAssessment.write(List.of(), Units.INCH, null))
        .contains("toeLength: unknown  # such as 3 9/16 in\n")
        .contains("weight: unknown  # such as 1036 lb\n")
        .contains("rollLength: unknown  # such as 12 ft\n");
  }

  @Test
  void explainsTheFirstFootOnly() {
    String second = BLANK.substring(BLANK.indexOf("  - limb: right-fore"), BLANK.indexOf("kit:"));
    assertThat(second.lines().filter(line -> line.contains("#"))).hasSize(1);
  }

  /** Every example is one a horse can have. */
  @Test
  void itsExamplesAreAllowed() {
    for (Units units : Units.values()) {
      String filled =
          BlankAssessment.write(List.of(Limb.LEFT_FORE), units, null)
              .replaceAll("unknown  # such as (.*)", "$1")
              .replaceAll("unknown  # year-month-day, such as (.*)", "$1");
      assertThat(Read.good(filled).feet().get(0).measures().toeLength()).isBetween(89.0, 91.0);
    }
  }

  @Test
  void itsRowsCountOnceTheirMarkIsTaken() {
    String blank = BlankAssessment.write(List.of(Limb.LEFT_FORE), Units.MM, null);
    int start = blank.indexOf("    # For each one a row like this under wall:");
    int end = blank.indexOf("    # Cracks.");
    String rows = blank.substring(blank.indexOf('\n', start) + 1, end);
    String filled =
        blank.substring(0, start).replace("wall: unknown", "wall:")
            + rows.replaceAll("(?m)^    # ", "    ").replace("side: unknown", "side: medial")
            + blank.substring(end);
    assertThat(Read.good(filled).feet().get(0).wall())
        .containsExactly(
            new WallStretch(Side.MEDIAL, null, null, null, null, null, null, null, null, null));
  }

  @Property(tries = 300)
  void whatIsKnownReadsBackTheSame(@ForAll("assessments") Assessment any) {
    for (Units units : Units.values()) {
      String written = BlankAssessment.write(any, units, null);
      assertThat(Read.good(written)).isEqualTo(in(units, any));
    }
  }

  /** A blank file says its units, whatever was known of them. */
  private static Assessment in(Units units, Assessment known) {
    return AssessmentEdit.of("units").with(known, units);
  }

  @Provide
  Arbitrary<Assessment> assessments() {
    return AnyAssessment.valid();
  }
}
