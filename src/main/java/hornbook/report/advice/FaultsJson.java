package hornbook.report.advice;

import com.fasterxml.jackson.core.JsonGenerator;
import hornbook.assessment.tree.Fault;
import hornbook.report.page.JsonText;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;

/**
 * Writes what is wrong with one of many assessments as a line in the format {@code
 * hornbook-faults/1}, in the place of its advice.
 */
public final class FaultsJson {
  public static final String FORMAT = "hornbook-faults/1";

  private FaultsJson() {}

  /** All faults of the line with this number, as one line, ended; the stream stays open. */
  public static void writeLine(long line, List<Fault> faults, OutputStream to) throws IOException {
    try (JsonGenerator json = JsonText.JSON.createGenerator(to)) {
      json.writeStartObject();
      json.writeStringField("format", FORMAT);
      json.writeNumberField("line", line);
      json.writeArrayFieldStart("faults");
      for (Fault fault : faults) {
        json.writeStartObject();
        json.writeStringField("path", fault.path());
        json.writeNumberField("column", fault.column());
        json.writeStringField("found", fault.found());
        json.writeStringField("allowed", fault.allowed());
        json.writeStringField("nearest", fault.nearest());
        json.writeEndObject();
      }
      json.writeEndArray();
      json.writeEndObject();
      json.writeRaw('\n');
    }
  }
}
