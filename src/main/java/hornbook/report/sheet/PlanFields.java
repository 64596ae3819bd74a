package hornbook.report.sheet;

import com.fasterxml.jackson.core.JsonGenerator;
import hornbook.foot.number.Unknown;
import hornbook.plan.figure.Figure;
import hornbook.report.page.JsonText;
import java.io.IOException;
import java.time.LocalDate;
import java.util.Collection;

/** Fields of a job sheet as JSON, numbers in the units of the reader; null for what is unknown. */
final class PlanFields {
  private final JsonGenerator json;
  private final PlanAmounts amounts;

  PlanFields(JsonGenerator json, PlanAmounts amounts) {
    this.json = json;
    this.amounts = amounts;
  }

  void texts(String key, Collection<String> texts) throws IOException {
    JsonText.texts(json, key, texts);
  }

  void date(String key, LocalDate date) throws IOException {
    json.writeStringField(key, date == null ? null : date.toString());
  }

  void figure(String key, Figure figure) throws IOException {
    if (figure == null) {
      json.writeNullField(key);
    } else {
      number(key, figure);
    }
  }

  void number(String key, Figure figure) throws IOException {
    number(key, figure.value(), figure.unit());
  }

  void number(String key, double value, String unit) throws IOException {
    json.writeFieldName(key);
    value(value, unit);
  }

  private void value(double value, String unit) throws IOException {
    if (Unknown.is(value)) {
      json.writeNull();
    } else {
      json.writeNumber(tidy(amounts.amount(value, unit).value()));
    }
  }

  /** Without the noise of the last digits of a sum. */
  static double tidy(double value) {
    double grain = 1e6;
    return Math.rint(value * grain) / grain + 0.0;
  }

  /** The unit in which the reader gets what is kept in this one. */
  void unit(String unit) throws IOException {
    json.writeStringField("unit", amounts.amount(0, unit).unit());
  }
}
