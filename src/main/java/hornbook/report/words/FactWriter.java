package hornbook.report.words;

import com.fasterxml.jackson.core.JsonGenerator;
import hornbook.advice.ReasonGiven;
import hornbook.rulebook.Subjects;
import hornbook.rulebook.fact.CitedFact;
import hornbook.rulebook.fact.Finding;
import hornbook.rulebook.fact.Limit;
import hornbook.rulebook.fact.Reading;
import hornbook.rulebook.fact.Seen;
import java.io.IOException;
import java.util.List;

/**
 * Facts as JSON. A number known only within bounds has the value null and its bounds under {@code
 * low} and {@code high}, null where there is none; a word has the unit "".
 */
public final class FactWriter {
  private final JsonGenerator json;
  private final Phrases phrases;

  public FactWriter(JsonGenerator json, Phrases phrases) {
    this.json = json;
    this.phrases = phrases;
  }

  /** Value and unit of a number, as fields of the object at hand. */
  public void amount(Reading reading, String unit) throws IOException {
    if (reading.exact()) {
      amount(reading.low(), unit);
      return;
    }
    Amounts.Amount low = phrases.amounts().amount(reading.low(), unit);
    Amounts.Amount high = phrases.amounts().amount(reading.high(), unit);
    json.writeNullField("value");
    json.writeFieldName("low");
    number(low.value());
    json.writeFieldName("high");
    number(high.value());
    json.writeStringField("unit", low.unit());
  }

  private void amount(double value, String unit) throws IOException {
    Amounts.Amount amount = phrases.amounts().amount(value, unit);
    json.writeFieldName("value");
    number(amount.value());
    json.writeStringField("unit", amount.unit());
  }

  /**
   * What a reason rests on: the first thing observed and the first limit under their own keys, any
   * others in lists behind them.
   */
  public void observed(ReasonGiven reason) throws IOException {
    json.writeFieldName("observed");
    fact(reason.observed());
    json.writeFieldName("limit");
    fact(reason.limit());
    others("alsoObserved", reason.because(), reason.observed(), false);
    others("alsoLimits", reason.because(), reason.limit(), true);
  }

  private void others(String key, List<CitedFact> because, CitedFact first, boolean limits)
      throws IOException {
    List<CitedFact> others =
        because.stream()
            .filter(fact -> fact instanceof Limit == limits && !fact.equals(first))
            .toList();
    if (!others.isEmpty()) {
      json.writeArrayFieldStart(key);
      for (CitedFact fact : others) {
        fact(fact);
      }
      json.writeEndArray();
    }
  }

  /** A fact as an object of its own, or null. */
  public void fact(CitedFact fact) throws IOException {
    if (fact == null) {
      json.writeNull();
      return;
    }
    json.writeStartObject();
    if (fact instanceof Limit limit) {
      limit(limit);
    } else {
      json.writeStringField("what", ObservedText.what(fact));
      if (fact instanceof Reading reading) {
        amount(reading, Subjects.unit(reading.what()));
      } else {
        json.writeStringField("value", word(fact));
        json.writeStringField("unit", "");
      }
    }
    json.writeEndObject();
  }

  private String word(CitedFact fact) {
    if (fact instanceof Seen seen) {
      return seen.word();
    }
    return fact instanceof Finding finding ? finding.what() : phrases.of(fact);
  }

  private void limit(Limit limit) throws IOException {
    json.writeStringField("id", limit.id());
    json.writeStringField("label", limit.label());
    amount(limit.value(), limit.unit());
    json.writeStringField("source", limit.source());
    json.writeStringField("basis", limit.basis().word());
  }

  /** A number; whole ones without a point, infinite ones null. */
  public void number(double value) throws IOException {
    if (Double.isInfinite(value)) {
      json.writeNull();
    } else if (value == Math.rint(value) && Math.abs(value) < 1e15) {
      json.writeNumber((long) value);
    } else {
      json.writeNumber(value);
    }
  }
}
