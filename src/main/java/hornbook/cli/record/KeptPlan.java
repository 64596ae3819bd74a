package hornbook.cli.record;

import com.fasterxml.jackson.databind.JsonNode;
import hornbook.cli.base.ExitCode;
import hornbook.cli.base.Failure;
import hornbook.cli.base.Surroundings;
import hornbook.cli.file.InputFile;
import hornbook.record.Entry;
import hornbook.record.store.EntryJson;
import hornbook.report.sheet.PlanJson;
import java.util.Map;

/** A job sheet that is to be kept with an entry. */
final class KeptPlan {
  private KeptPlan() {}

  /**
   * The sheet in the file.
   *
   * @throws Failure where it is none, or of another horse, foot or technique
   */
  static JsonNode of(
      String file, String horse, Map<String, String> chose, Surroundings surroundings) {
    String shown = InputFile.shown(file);
    byte[] bytes =
        InputFile.read(
            file, "write one with: hornbook plan ... --format json -o " + file, surroundings);
    JsonNode plan = EntryJson.tree(bytes);
    if (plan == null || !PlanJson.FORMAT.equals(plan.path("format").asText())) {
      throw Failure.of(
          ExitCode.INVALID_INPUT,
          shown + " is no job sheet in JSON",
          "write one with: hornbook plan FILE --technique T --format json -o " + shown);
    }
    same(shown, "horse", horse, Entry.text(plan, "horse"));
    String foot = String.valueOf(Entry.text(plan, "foot"));
    if (!chose.containsKey(foot)) {
      same(shown, "foot", String.join(", ", chose.keySet()), foot);
    }
    same(shown, "technique", chose.get(foot), Entry.text(plan, "technique"));
    return plan;
  }

  private static void same(String file, String what, String wanted, String found) {
    if (!String.valueOf(wanted).equals(String.valueOf(found))) {
      throw Failure.of(
          ExitCode.INVALID_INPUT,
          file + " is the sheet of another " + what + ": " + found,
          "the entry is of: " + wanted);
    }
  }
}
