package hornbook.cli.record;

import com.fasterxml.jackson.databind.JsonNode;
import hornbook.advice.Advice;
import hornbook.advice.FootAdvice;
import hornbook.advice.engine.Advisor;
import hornbook.assessment.quantity.Units;
import hornbook.assessment.read.AssessmentReader;
import hornbook.assessment.read.ReadResult;
import hornbook.cli.base.RuleSource;
import hornbook.plan.Plan;
import hornbook.record.AssessmentTree;
import hornbook.record.Entry;
import hornbook.report.drawing.Drawing;
import hornbook.report.drawing.Drawings;
import hornbook.report.record.RecordPart;
import hornbook.report.words.Amounts;
import hornbook.report.words.FieldNames;
import java.util.ArrayList;
import java.util.List;

/**
 * The feet of an entry, drawn from what was noted. An entry keeps no drawings: they are made anew
 * from its numbers. Where the rules or limits are no longer those of the entry, the page says what
 * in the drawings is computed by those of today.
 */
final class EntryDrawings {
  private static final String HEADING = "Drawings";
  private static final String BEFORE = "Drawn from what was noted at the visit, before any work.";
  private static final String BEFORE_AND_AFTER =
      "Drawn from what was noted at the visit; after the job, by the job sheet kept with the"
          + " entry.";
  private static final String SHEET_DIFFERS =
      "The foot after the job is not drawn: this program computes other numbers for it than the"
          + " job sheet kept with the entry.";

  private final Entry entry;
  private final Advice advice;
  private final Units units;
  private final String today;

  private EntryDrawings(Entry entry, Advice advice, Units units, String today) {
    this.entry = entry;
    this.advice = advice;
    this.units = units;
    this.today = today;
  }

  /** A part for each foot, or one that says why there are none. */
  static List<RecordPart> of(Entry entry, RuleSource rules, Units units) {
    byte[] bytes = AssessmentTree.bytes(entry.assessment());
    if (!(AssessmentReader.read(bytes, "entry", List.of()) instanceof ReadResult.Good read)) {
      return List.of(
          RecordPart.of(HEADING, List.of("None: this program can no longer read the assessment.")));
    }
    Advice advice = new Advisor(rules.loaded()).advise(read.assessment());
    boolean same = new VisitRecord(read, advice).given().equals(entry.advice());
    EntryDrawings drawings =
        new EntryDrawings(entry, advice, units, same ? null : today(entry, advice));
    return advice.feet().stream().map(drawings::foot).toList();
  }

  private RecordPart foot(FootAdvice foot) {
    List<String> lines = new ArrayList<>();
    JsonNode kept = entry.plan();
    List<Drawing> drawn = null;
    boolean sheet = foot.limb().word().equals(Entry.text(kept, "foot"));
    if (sheet) {
      Plan again = KeptPlan.again(kept, advice, foot);
      if (again != null) {
        lines.add(BEFORE_AND_AFTER);
        drawn = Drawings.of(again, new Amounts(units));
      }
    }
    if (drawn == null) {
      lines.add(BEFORE);
      drawn = Drawings.of(advice, foot, new Amounts(units));
      if (sheet) {
        lines.add(SHEET_DIFFERS);
      }
    }
    if (today != null) {
      lines.add(today);
    }
    return RecordPart.drawn(HEADING + ": " + FieldNames.of(foot.limb()), lines, drawn);
  }

  /** What is not as it was on the day of the entry. */
  private static String today(Entry entry, Advice advice) {
    String practice = Entry.text(entry.rulebook().path("practice"), "name");
    return "The entry was made with rule base "
        + Entry.text(entry.rulebook(), "version")
        + (practice == null ? "" : " and the limits of " + practice)
        + "; this program has rule base "
        + advice.rulebook().version()
        + (practice == null ? "" : " without those limits")
        + ", and its advice on these numbers differs. Lengths, heights, angles and the wall map"
        + " are those of the visit. Nail places, the clearance line, breakover and growth dates are"
        + " computed by the limits of today: where they differ from the advice above, the advice"
        + " above is what was given.";
  }
}
