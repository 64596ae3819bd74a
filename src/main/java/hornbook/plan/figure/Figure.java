package hornbook.plan.figure;

import hornbook.foot.number.Unknown;
import hornbook.rulebook.fact.Basis;
import hornbook.rulebook.fact.Limit;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * A number of the sheet with all it came from. It was measured, or is a limit of the trade, or is
 * reckoned from others; one that lies between bounds has a low and a high. Both are unknown where
 * something it needs was not measured.
 *
 * @param label its name in trade words
 * @param unit as in the limits; empty for counts
 * @param formula how it is reckoned, with a hole for each part; null for what is not reckoned
 * @param parts what it is reckoned from, by the names of the holes
 * @param limit the limit it is, or null
 * @param field the field it was measured in, or null
 */
public record Figure(
    String label,
    double low,
    double high,
    String unit,
    String formula,
    Map<String, Figure> parts,
    Limit limit,
    String field)
    implements Placeholder {

  /** What was measured, or asked for on the command line; null is not measured. */
  public static Figure measured(String label, Number value, String unit, String field) {
    double known = value == null ? Unknown.NUMBER : value.doubleValue();
    return new Figure(label, known, known, unit, null, Map.of(), null, field);
  }

  public static Figure of(Limit limit) {
    return new Figure(
        limit.label(), limit.value(), limit.value(), limit.unit(), null, Map.of(), limit, null);
  }

  public static Figure reckoned(
      String label, double value, String unit, String formula, FormulaParts parts) {
    return between(label, value, value, unit, formula, parts);
  }

  /** Unknown when either bound is, or anything it is reckoned from. */
  public static Figure between(
      String label, double low, double high, String unit, String formula, FormulaParts parts) {
    boolean known = low <= high;
    for (Figure part : parts.all().values()) {
      known &= part.known();
    }
    return new Figure(
        label,
        known ? low : Unknown.NUMBER,
        known ? high : Unknown.NUMBER,
        unit,
        formula,
        parts.all(),
        null,
        null);
  }

  public boolean known() {
    return !Unknown.is(low);
  }

  /** The number; the lower bound where it lies between two. */
  public double value() {
    return low;
  }

  /** Whether it is worked out, and not a limit or a measure as it stands. */
  public boolean reckoned() {
    return formula != null;
  }

  /**
   * The weakest ground among the limits it rests on, and never better than derived when it is
   * reckoned; null for a bare measure.
   */
  public Basis basis() {
    if (limit != null) {
      return limit.basis();
    }
    return reckoned() ? weakest(Basis.DERIVED, parts.values()) : null;
  }

  /** The weakest of a ground and those of some figures. */
  public static Basis weakest(Basis ground, Collection<Figure> figures) {
    Basis weakest = ground;
    for (Figure figure : figures) {
      weakest = figure.basis() == null ? weakest : weakest.weaker(figure.basis());
    }
    return weakest;
  }

  /** Keys of the works behind it, in the order they come in. */
  public Set<String> sources() {
    Set<String> sources = new LinkedHashSet<>();
    if (limit != null) {
      sources.add(limit.source());
    }
    parts.values().forEach(part -> sources.addAll(part.sources()));
    return sources;
  }

  /** The fields that would have to be measured for it to be known. */
  public Set<String> missing() {
    Set<String> missing = new LinkedHashSet<>();
    if (field != null && !known()) {
      missing.add(field);
    }
    parts.values().forEach(part -> missing.addAll(part.missing()));
    return missing;
  }

  /** Itself and all it is reckoned from, those that others rest on first, itself last. */
  public List<Figure> origins() {
    Set<Figure> origins = new LinkedHashSet<>();
    parts.values().forEach(part -> origins.addAll(part.origins()));
    origins.add(this);
    return List.copyOf(origins);
  }
}
