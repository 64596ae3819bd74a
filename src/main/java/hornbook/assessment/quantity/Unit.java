package hornbook.assessment.quantity;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * A unit a quantity may be written in. The inch is 25.4 mm and the pound 0.45359237 kg by
 * definition (international yard and pound agreement, 1959).
 */
public enum Unit {
  MM(Dimension.LENGTH, 1, "mm"),
  CM(Dimension.LENGTH, 10, "cm"),
  METRE(Dimension.LENGTH, 1000, "m"),
  INCH(Dimension.LENGTH, 25.4, "in", "inch", "inches", "\"", "\u2033", "\u201d", "''"),
  FOOT(Dimension.LENGTH, 304.8, "ft", "foot", "feet", "'", "\u2032", "\u2019"),
  DEGREE(Dimension.ANGLE, 1, "deg", "degree", "degrees", "\u00b0", "\u00ba", "\u02da"),
  KILOGRAM(Dimension.MASS, 1, "kg", "kgs", "kilo", "kilos"),
  POUND(Dimension.MASS, 0.45359237, "lb", "lbs"),
  CELSIUS(Dimension.TEMPERATURE, 1, "C", "\u00b0C", "\u00baC"),
  FAHRENHEIT(Dimension.TEMPERATURE, 5 / 9.0, "F", "\u00b0F", "\u00baF");

  private static final double FREEZING_FAHRENHEIT = 32;

  /** Finer than anything measured, coarser than the noise of a conversion. */
  private static final double GRAIN = 1e9;

  private static final Map<String, Unit> SPELT = new TreeMap<>(String.CASE_INSENSITIVE_ORDER);
  private static final Map<String, Unit> SYMBOLS = new HashMap<>();

  static {
    for (Unit unit : values()) {
      unit.spellings.forEach(spelling -> SPELT.putIfAbsent(spelling, unit));
      SYMBOLS.put(unit.symbol(), unit);
    }
  }

  private final Dimension dimension;
  private final double size;
  private final List<String> spellings;

  Unit(Dimension dimension, double size, String... spellings) {
    this.dimension = dimension;
    this.size = size;
    this.spellings = List.of(spellings);
  }

  public Dimension dimension() {
    return dimension;
  }

  /** The way this unit is written: {@code mm}, {@code in}, {@code deg}. */
  public String symbol() {
    return spellings.get(0);
  }

  /** Every way this unit may be written; capitals and small letters are the same. */
  public List<String> spellings() {
    return spellings;
  }

  /** From this unit into the one the records keep. */
  public double toKept(double amount) {
    if (this == dimension.kept()) {
      return amount;
    }
    double zero = this == FAHRENHEIT ? FREEZING_FAHRENHEIT : 0;
    return Math.rint((amount - zero) * size * GRAIN) / GRAIN;
  }

  /** From the unit the records keep into this one. */
  public double fromKept(double amount) {
    if (this == dimension.kept()) {
      return amount;
    }
    double zero = this == FAHRENHEIT ? FREEZING_FAHRENHEIT : 0;
    return Math.rint((amount / size + zero) * GRAIN) / GRAIN;
  }

  /** The unit so spelt, or null. */
  static Unit spelt(String text) {
    return SPELT.get(text);
  }

  /** The unit with this symbol, or null. */
  public static Unit of(String symbol) {
    return SYMBOLS.get(symbol);
  }
}
