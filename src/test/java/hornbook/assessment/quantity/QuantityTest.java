package hornbook.assessment.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.regex.Pattern;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.Chars;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class QuantityTest {
  /** Inch and pound by their definitions; temperatures at the fixed points of both scales. */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '~',
      textBlock =
          """
          92 mm     | 92
          9.2 cm    | 92
          0.092 m   | 92
          92        | 92
          1 in      | 25.4
          3 5/8 in  | 92.075
          3-5/8 in  | 92.075
          3\u215d in | 92.075
          3 \u215d\u2033 | 92.075
          5/8 in    | 15.875
          3.5"      | 88.9
          3.5 inches| 88.9
          1 ft      | 304.8
          12 FT     | 3657.6
          -3 deg    | -3
          50\u00b0  | 50
          470 KG    | 470
          1 lb      | 0.45359237
          1014 lb   | 459.94266318
          38.0\u00a0C | 38
          212 F     | 100
          32 \u00b0F | 0
          -40 F     | -40
          98.6 F    | 37
          .5 mm     | 0.5
          +5. mm    | 5
          92,5 mm   | 92.5
          3,75 in   | 95.25
          50\u00ba  | 50
          1036 lbs  | 469.92169532
          3 5/8'' | 92.075
          38,5 \u00baC | 38.5
          """)
  void readsWhatPeopleWrite(String text, double kept) {
    assertThat(Quantity.parse(text).kept(Unit.MM)).isCloseTo(kept, within(1e-9));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        " ",
        "mm",
        "5/0 in",
        "5/ in",
        "/8 in",
        "3 5/8/2 in",
        "92,5,1 mm",
        ",5 mm",
        "1,014 lb",
        "92 furlongs",
        "9 2 mm",
        "92 mm mm",
        "--3",
        "3 - in",
        "1e2 mm",
        "0x10",
        "NaN",
        "Infinity",
        "3 5 in",
        "."
      })
  void refusesWhatIsNoQuantity(String text) {
    assertThat(Quantity.parse(text)).isNull();
  }

  @ParameterizedTest
  @CsvSource({
    "92.075, 3 5/8 in",
    "25.4, 1 in",
    "15.875, 5/8 in",
    "1.5875, 1/16 in",
    "-50.8, -2 in",
    "96, 3 3/4 in",
    "0, 0 in"
  })
  void showsInchesAsARuleIsRead(double mm, String shown) {
    assertThat(Units.INCH.show(mm, Dimension.LENGTH)).isEqualTo(shown);
  }

  @ParameterizedTest
  @CsvSource({"460, MASS, 1014 lb", "11, TEMPERATURE, 51.8 F", "46.25, ANGLE, 46.2 deg"})
  void showsTheRestInTheUnitsOfTheInch(double kept, Dimension dimension, String shown) {
    assertThat(Units.INCH.show(kept, dimension)).isEqualTo(shown);
  }

  @Property
  void goesFromMetricToInchAndBack(@ForAll @DoubleRange(min = -500, max = 3000) double amount) {
    for (Unit unit : Unit.values()) {
      String written = Quantity.write(amount, unit);
      assertThat(Quantity.parse(written).unit()).isEqualTo(unit);
      assertThat(Quantity.parse(written).kept(Unit.MM)).isCloseTo(amount, within(1e-5));
    }
  }

  @Property
  void showsWithinASixteenthOfAnInch(@ForAll @DoubleRange(min = 0, max = 900) double mm) {
    String shown = Units.INCH.show(mm, Dimension.LENGTH);
    assertThat(Quantity.parse(shown).kept(Unit.MM)).isCloseTo(mm, within(25.4 / 32 + 1e-9));
  }

  /** The expression handed to editors and the reading itself know the same quantities. */
  @Property(tries = 5000)
  void theExpressionOfTheSchemaAgrees(
      @ForAll
          @Chars({'1', '0', '5', ' ', '/', '.', '-', '+', 'i', 'n', 'm', '"', 'C', '\u00bd'})
          @StringLength(max = 7)
          String text) {
    for (Dimension dimension : Dimension.values()) {
      boolean matches = Pattern.compile(Quantity.pattern(dimension)).matcher(text).find();
      Quantity quantity = Quantity.parse(text);
      boolean reads =
          quantity != null && (quantity.unit() == null || quantity.unit().dimension() == dimension);
      assertThat(matches).as("%s: \"%s\"", dimension, text).isEqualTo(reads);
    }
  }
}
