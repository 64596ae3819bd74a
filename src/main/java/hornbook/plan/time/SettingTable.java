package hornbook.plan.time;

import hornbook.foot.number.Unknown;
import hornbook.plan.figure.Figure;
import hornbook.plan.figure.FormulaParts;
import hornbook.plan.sheet.SheetDraft;
import hornbook.rulebook.fact.Basis;
import java.util.List;

/**
 * Setting times measured at some temperatures: between them they are interpolated on the straight
 * line. Colder and warmer than any of them the time is not known.
 */
final class SettingTable {
  private final String what;
  private final List<Row> rows;

  /** A temperature, and what was measured at it. */
  record Row(Figure at, Figure measured) {}

  /**
   * @param what names the figure that is looked up
   * @param rows two or more, the coldest first
   */
  SettingTable(String what, List<Row> rows) {
    this.what = what;
    this.rows = rows;
  }

  /** Whether the temperature lies within the table. */
  boolean covers(Figure temperature) {
    return first().at().value() <= temperature.value()
        && temperature.value() <= last().at().value();
  }

  /** What the table gives; unknown where the temperature is, or lies outside the table. */
  Figure at(Figure temperature) {
    if (!covers(temperature)) {
      return Figure.reckoned(
          what,
          Unknown.NUMBER,
          last().measured().unit(),
          "{at}",
          FormulaParts.of("at", temperature));
    }
    int i = 1;
    while (temperature.value() > rows.get(i).at().value()) {
      i++;
    }
    return within(rows.get(i - 1), rows.get(i), temperature);
  }

  private Figure within(Row low, Row high, Figure temperature) {
    double share =
        (temperature.value() - low.at().value()) / (high.at().value() - low.at().value());
    double value =
        low.measured().value() + share * (high.measured().value() - low.measured().value());
    return Figure.reckoned(
        what,
        value,
        low.measured().unit(),
        "between {low} at {cold} and {high} at {warm}, on the straight line for {at}",
        FormulaParts.of("low", low.measured())
            .and("cold", low.at())
            .and("high", high.measured())
            .and("warm", high.at())
            .and("at", temperature));
  }

  private Row first() {
    return rows.get(0);
  }

  private Row last() {
    return rows.get(rows.size() - 1);
  }

  /**
   * A time kept where setting takes so long as the base says; longer where it takes longer, never
   * shorter. A time that no work gives is not worked out further: it stands as it is.
   */
  static Figure scaled(SheetDraft draft, String kept, String base, Figure set, String label) {
    Figure usual = draft.limit(kept);
    Figure at = draft.limit(base);
    Basis ground = usual.limit().basis();
    if (ground == Basis.MEMORY || ground == Basis.PRACTICE) {
      return usual;
    }
    return Figure.between(
        label,
        usual.value() * Math.max(1, set.low() / at.value()),
        usual.value() * Math.max(1, set.high() / at.value()),
        "minutes",
        "{usual}, and longer as the setting time {set} is longer than {at}",
        FormulaParts.of("usual", usual).and("set", set).and("at", at));
  }

  /** A time give or take the spread of makes and yards. */
  static Figure spread(SheetDraft draft, Figure time, String label) {
    Figure spread = draft.limit("set.spread");
    double share = spread.value() / 100;
    return Figure.between(
        label,
        time.low() * (1 - share),
        time.high() * (1 + share),
        "minutes",
        "{time} give or take {spread}",
        FormulaParts.of("time", time).and("spread", spread));
  }
}
