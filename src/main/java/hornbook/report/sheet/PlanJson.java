package hornbook.report.sheet;

import com.fasterxml.jackson.core.JsonGenerator;
import hornbook.assessment.quantity.Units;
import hornbook.plan.Plan;
import hornbook.report.page.JsonText;
import java.io.IOException;
import java.io.Writer;

/**
 * Writes a job sheet in the format {@code hornbook-plan/1}. Every number is in the units asked for;
 * one that was not measured is null.
 */
public final class PlanJson {
  public static final String FORMAT = "hornbook-plan/1";

  private PlanJson() {}

  /** One sheet as one object, on many lines; the writer stays open. */
  public static void write(Plan plan, Units units, Writer to) throws IOException {
    try (JsonGenerator json = JsonText.pretty(to)) {
      new PlanWriter(json, plan, units).write();
      json.writeRaw('\n');
    }
  }
}
