package hornbook.report.record;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import hornbook.foot.number.Unknown;
import hornbook.record.store.EntryJson;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** A page of the record as JSON: a paper for other programs. */
public final class RecordJson {
  public static final String PAPER = "hornbook-paper/1";
  public static final String HISTORY = "hornbook-history/1";

  private RecordJson() {}

  /**
   * @param about whom it is for, or what it is about: the field {@code for}
   */
  public static String render(RecordPage page, String format, String about) {
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    node.put("format", format);
    node.put("for", about);
    node.put("title", page.title());
    page.facts().forEach(node.putArray("facts")::add);
    ArrayNode parts = node.putArray("parts");
    for (RecordPart part : page.parts()) {
      ObjectNode one = parts.addObject();
      one.put("heading", part.heading());
      one.put("alarm", part.alarm());
      part.lines().forEach(one.putArray("lines")::add);
      table(part.table(), one.putArray("table"));
      ArrayNode charts = one.putArray("charts");
      part.charts().forEach(chart -> chart(chart, charts.addObject()));
    }
    page.closing().forEach(node.putArray("closing")::add);
    return new String(EntryJson.bytes(node), StandardCharsets.UTF_8);
  }

  private static void table(List<List<String>> rows, ArrayNode to) {
    for (List<String> row : rows) {
      row.forEach(to.addArray()::add);
    }
  }

  private static void chart(RecordChart chart, ObjectNode to) {
    to.put("title", chart.title());
    to.put("unit", chart.unit());
    ArrayNode points = to.putArray("points");
    for (RecordChart.Point point : chart.points()) {
      ObjectNode one = points.addObject();
      one.put("when", point.when());
      one.put("day", point.day());
      number(one, "value", point.value());
      number(one, "forecastLow", point.low());
      number(one, "forecastHigh", point.high());
    }
  }

  private static void number(ObjectNode to, String key, double value) {
    if (Unknown.is(value)) {
      to.putNull(key);
    } else {
      to.put(key, Math.rint(value * 1e4) / 1e4);
    }
  }
}
