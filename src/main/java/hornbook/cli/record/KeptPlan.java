package hornbook.cli.record;

import com.fasterxml.jackson.databind.JsonNode;
import hornbook.advice.Advice;
import hornbook.advice.FootAdvice;
import hornbook.assessment.quantity.Units;
import hornbook.cli.base.ExitCode;
import hornbook.cli.base.Failure;
import hornbook.cli.base.Surroundings;
import hornbook.cli.file.InputFile;
import hornbook.plan.Plan;
import hornbook.plan.PlanMaker;
import hornbook.plan.sheet.PlanWishes;
import hornbook.plan.sheet.Technique;
import hornbook.record.Entry;
import hornbook.record.store.EntryJson;
import hornbook.report.sheet.PlanJson;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** A job sheet that is kept with an entry. */
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

  /**
   * The sheet made anew for the foot; null where this program computes another foot after the job,
   * or knows the technique no more.
   */
  static Plan again(JsonNode kept, Advice advice, FootAdvice foot) {
    Technique technique = Technique.of(String.valueOf(Entry.text(kept, "technique")));
    if (technique == null) {
      return null;
    }
    Plan plan = PlanMaker.plan(advice, foot, technique, wishes(kept));
    Units units = "inch".equals(Entry.text(kept, "units")) ? Units.INCH : Units.MM;
    JsonNode now = tree(plan, units);
    boolean same = now.path("footAfter").equals(kept.path("footAfter"));
    return same && plan.added() != null ? plan : null;
  }

  /** The sheet as the program writes it. */
  static JsonNode tree(Plan plan, Units units) {
    StringWriter text = new StringWriter();
    try {
      PlanJson.write(plan, units, text);
    } catch (IOException never) {
      throw new UncheckedIOException(never);
    }
    return EntryJson.tree(text.toString().getBytes(StandardCharsets.UTF_8));
  }

  private static PlanWishes wishes(JsonNode kept) {
    JsonNode wishes = kept.path("wishes");
    List<String> supports = new ArrayList<>();
    wishes.path("supports").forEach(one -> supports.add(one.asText()));
    return new PlanWishes(
        number(wishes.path("targetRatio")),
        number(wishes.path("targetAngle")),
        number(wishes.path("add")),
        number(wishes.path("dip")),
        number(wishes.path("wedge")),
        supports,
        Entry.text(kept, "despite"));
  }

  private static Double number(JsonNode node) {
    return node.isNumber() ? node.asDouble() : null;
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
