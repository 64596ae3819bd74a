package hornbook.rulebook.practice;

import hornbook.assessment.quantity.Quantity;
import hornbook.assessment.quantity.Unit;
import hornbook.assessment.tree.LocatedValue.Scalar;
import hornbook.assessment.tree.LocatedValue.Token;
import hornbook.rulebook.fact.Limit;
import java.time.Duration;
import java.util.Locale;
import java.util.Map;

/** A value for a limit as somebody wrote it: with its unit, with one like it, or bare. */
public final class LimitAmount {
  /** How far from the value it has a limit may be moved: further is a slip of the pen. */
  private static final double MOST_TIMES = 10;

  /** Spans of time that stand for one another. */
  private static final Map<String, Duration> TIMES =
      Map.of(
          "minutes", Duration.ofMinutes(1),
          "hours", Duration.ofHours(1),
          "days", Duration.ofDays(1),
          "weeks", Duration.ofDays(7));

  private final Limit limit;

  public LimitAmount(Limit limit) {
    this.limit = limit;
  }

  /** In the limit's unit; null where the text is no such amount. */
  Double of(Scalar scalar) {
    return scalar.token() == Token.FLAG ? null : of(scalar.text());
  }

  /** In the limit's unit; null where the text is no such amount. */
  Double of(String text) {
    Duration own = TIMES.get(limit.unit());
    for (Map.Entry<String, Duration> time : TIMES.entrySet()) {
      String[] spelt = text.strip().toLowerCase(Locale.ROOT).split("\\s+");
      boolean other = spelt.length == 2 && (spelt[1] + "s").startsWith(time.getKey());
      if (own != null && other && !time.getValue().equals(own)) {
        Double count = ofUnit(spelt[0]);
        return count == null
            ? null
            : Double.valueOf(count * time.getValue().toSeconds() / own.toSeconds());
      }
    }
    return ofUnit(text);
  }

  private Double ofUnit(String text) {
    String plain = plain(text.strip());
    Quantity quantity = Quantity.parse(plain);
    if (quantity == null) {
      return null;
    }
    if (quantity.unit() == null) {
      return quantity.number() + 0.0;
    }
    Unit own = own();
    boolean difference = limit.id().startsWith("error.");
    boolean shifted = quantity.unit() == Unit.FAHRENHEIT;
    if (own == null || own.dimension() != quantity.unit().dimension() || difference && shifted) {
      return null;
    }
    return own.fromKept(quantity.unit().toKept(quantity.number())) + 0.0;
  }

  /** Without a unit that only limits have. */
  private String plain(String text) {
    if (limit.unit().isEmpty() || own() != null) {
      return text;
    }
    String lower = text.toLowerCase(Locale.ROOT);
    String unit = limit.unit().toLowerCase(Locale.ROOT);
    String one = unit.endsWith("s") ? unit.substring(0, unit.length() - 1) : unit;
    for (String spelt : new String[] {unit, one}) {
      if (lower.endsWith(spelt)) {
        return text.substring(0, text.length() - spelt.length()).strip();
      }
      if (lower.startsWith(spelt)) {
        return text.substring(spelt.length()).strip();
      }
    }
    return text;
  }

  private Unit own() {
    for (Unit unit : Unit.values()) {
      if (unit.symbol().equals(limit.unit())) {
        return unit;
      }
    }
    return null;
  }

  /** The least it may be moved to. */
  public double least() {
    return switch (limit.unit()) {
      case "%", "grade" -> 0;
      default -> limit.value() > 0 ? limit.value() / MOST_TIMES : -span();
    };
  }

  /** The most it may be moved to. */
  public double most() {
    return switch (limit.unit()) {
      case "%" -> Math.max(100, limit.value());
      case "grade" -> Math.max(5, limit.value());
      default -> limit.value() > 0 ? limit.value() * MOST_TIMES : span();
    };
  }

  private double span() {
    return MOST_TIMES * Math.max(Math.abs(limit.value()), limit.step());
  }

  /** What may stand there, in words. */
  String allowed() {
    String unit = limit.unit().isEmpty() ? "" : " " + limit.unit();
    return "an amount from " + shown(least()) + unit + " to " + shown(most()) + unit;
  }

  static String shown(double value) {
    return value == Math.rint(value) ? String.valueOf((long) value) : String.valueOf(value);
  }
}
