package hornbook.foot;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornbook.assessment.Horse;
import hornbook.foot.number.Interval;
import java.util.HashMap;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class BodyWeightTest {
  private static final int GROWN = 365;

  /** carroll-1988: girth 190 cm and length 165 cm make 500.5 kg. */
  @Test
  void isEstimatedFromGirthAndLength() {
    BodyWeight weight = BodyWeight.of(horse(8, null, null, 1900.0, 1650.0), GROWN);
    assertThat(weight.kg()).isCloseTo(500.5, within(0.05));
    assertThat(weight.how()).isEqualTo(BodyWeight.How.ESTIMATED);
  }

  /** The form in inches and pounds divides by 330 (published extension leaflets). */
  @Property
  void agreesWithTheFormInInchesAndPounds(
      @ForAll @DoubleRange(min = 140, max = 230) double girth,
      @ForAll @DoubleRange(min = 120, max = 200) double length) {
    double pounds = Math.pow(girth / 2.54, 2) * (length / 2.54) / 330;
    double kg = pounds * 0.45359237;
    assertThat(BodyWeight.estimate(girth, length)).isCloseTo(kg, within(0.003 * kg));
  }

  @Test
  void aMeasuredWeightStands() {
    assertThat(BodyWeight.of(horse(8, null, 470.0, 1900.0, 1650.0), GROWN))
        .isEqualTo(new BodyWeight(470, BodyWeight.How.MEASURED));
    assertThat(BodyWeight.of(horse(null, 60, 90.0, null, null), GROWN).kg()).isEqualTo(90);
  }

  @Test
  void aFoalIsNotEstimated() {
    assertThat(BodyWeight.of(horse(null, 364, null, 1300.0, 1100.0), GROWN).how()).isNull();
    assertThat(BodyWeight.of(horse(0, null, null, 1300.0, 1100.0), GROWN).kg()).isNaN();
    assertThat(BodyWeight.of(horse(1, null, null, 1300.0, 1100.0), GROWN).how())
        .isEqualTo(BodyWeight.How.ESTIMATED);
  }

  @Test
  void aHorseThatMayBeYoungIsNotEstimated() {
    Horse yearling = horse(1, null, null, 1500.0, 1300.0);
    assertThat(BodyWeight.of(yearling, 500).how()).isNull();
    assertThat(BodyWeight.of(yearling, 365).how()).isEqualTo(BodyWeight.How.ESTIMATED);
  }

  @Test
  void needsBothMeasures() {
    assertThat(BodyWeight.of(horse(8, null, null, 1900.0, null), GROWN).how()).isNull();
    assertThat(BodyWeight.of(horse(8, null, null, null, 1650.0), GROWN).kg()).isNaN();
  }

  @Test
  void ageInYearsSpansTheYear() {
    assertThat(Age.days(horse(6, null, null, null, null))).isEqualTo(new Interval(2190, 2554));
    assertThat(Age.days(horse(0, null, null, null, null))).isEqualTo(new Interval(0, 364));
    assertThat(Age.days(horse(0, 120, null, null, null))).isEqualTo(Interval.of(120));
    assertThat(Age.days(horse(null, null, null, null, null))).isEqualTo(Interval.UNKNOWN);
  }

  private static Horse horse(
      Integer years, Integer days, Double weight, Double girth, Double length) {
    Map<String, Object> known = new HashMap<>();
    known.put("ageYears", years);
    known.put("ageDays", days);
    known.put("weight", weight);
    known.put("girth", girth);
    known.put("bodyLength", length);
    return Given.a(Horse.class, known);
  }
}
