package hornbook.cli.record;

import hornbook.advice.Advice;
import hornbook.advice.engine.Advisor;
import hornbook.assessment.quantity.Units;
import hornbook.assessment.read.AssessmentReader;
import hornbook.assessment.read.ReadResult;
import hornbook.cli.base.RuleSource;
import hornbook.record.AssessmentTree;
import hornbook.record.Entry;
import hornbook.report.drawing.Drawings;
import hornbook.report.record.RecordPart;
import hornbook.report.words.Amounts;
import hornbook.report.words.FieldNames;
import java.util.List;

/**
 * The feet of an entry, drawn from what was noted. An entry keeps no drawings: they are made anew,
 * and only where the rules of this program still give the very advice that was given, so that a
 * drawing never contradicts the advice beside it.
 */
final class EntryDrawings {
  private static final String HEADING = "Drawings";

  private EntryDrawings() {}

  /** A part for each foot, or one that says why there are none. */
  static List<RecordPart> of(Entry entry, RuleSource rules, Units units) {
    byte[] bytes = AssessmentTree.bytes(entry.assessment());
    if (!(AssessmentReader.read(bytes, "entry", List.of()) instanceof ReadResult.Good read)) {
      return none("None: this program can no longer read the assessment.");
    }
    Advice advice = new Advisor(rules.loaded()).advise(read.assessment());
    if (!new VisitRecord(read, advice).given().equals(entry.advice())) {
      return none(
          "None: by the rules of this program the same assessment does not give the advice of"
              + " this entry, so drawings made now could contradict it.");
    }
    Amounts amounts = new Amounts(units);
    return advice.feet().stream()
        .map(
            foot ->
                RecordPart.drawn(
                    HEADING + ": " + FieldNames.of(foot.limb()),
                    List.of("Drawn from what was noted at the visit, before any work."),
                    Drawings.of(advice, foot, amounts)))
        .toList();
  }

  private static List<RecordPart> none(String why) {
    return List.of(RecordPart.of(HEADING, List.of(why)));
  }
}
