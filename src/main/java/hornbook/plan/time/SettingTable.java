package hornbook.plan.time;

import hornbook.foot.number.Unknown;
import hornbook.plan.figure.Figure;
import hornbook.plan.figure.FormulaParts;
import hornbook.plan.sheet.SheetDraft;
import hornbook.rulebook.fact.Basis;
import java.util.List;

/**
 * Setting times measured at some temperatures: between them they are interpolated on the straight
 * line; beyond them they are estimated by how much setting is known to slow for ten degrees, and
 * the figure says that it lies beyond the table.
 */
final class SettingTable {
  private static final double TEN = 10;

  private final SheetDraft draft;
  private final String what;
  private final List<Row> rows;

  /** A temperature, and what was measured at it. */
  record Row(Figure at, Figure measured) {}

  /**
   * @param what names the figure that is looked up
   * @param rows two or more, the coldest first
   */
  SettingTable(SheetDraft draft, String what, List<Row> rows) {
    this.draft = draft;
    this.what = what;
    this.rows = rows;
  }

  /** Whether the temperature lies within the table. */
  boolean covers(Figure temperature) {
    return first().at().value() <= temperature.value()
        && temperature.value() <= last().at().value();
  }

  /** What the table gives; unknown where the temperature is. */
  Figure at(Figure temperature) {
    if (!temperature.known()) {
      return Figure.reckoned(
          what,
          Unknown.NUMBER,
          last().measured().unit(),
          "{at}",
          FormulaParts.of("at", temperature));
    }
    if (temperature.value() < first().at().value()) {
      return beyond(first(), temperature);
    }
    if (temperature.value() > last().at().value()) {
      return beyond(last(), temperature);
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

  private Figure beyond(Row end, Figure temperature) {
    Figure least = draft.limit("set.slower-least");
    Figure most = draft.limit("set.slower-most");
    double tens = (end.at().value() - temperature.value()) / TEN;
    double one = end.measured().value() * Math.pow(least.value(), tens);
    double other = end.measured().value() * Math.pow(most.value(), tens);
    return Figure.between(
        what,
        Math.min(one, other),
        Math.max(one, other),
        end.measured().unit(),
        "beyond the table: {end} at {edge}, {least} to {most} times as long for ten degrees colder,"
            + " for {at}",
        FormulaParts.of("end", end.measured())
            .and("edge", end.at())
            .and("least", least)
            .and("most", most)
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
