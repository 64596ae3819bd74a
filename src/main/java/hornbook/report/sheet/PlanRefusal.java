package hornbook.report.sheet;

import hornbook.advice.OptionAdvice;
import hornbook.advice.ReasonGiven;
import hornbook.assessment.quantity.Units;
import hornbook.plan.Plan;
import hornbook.report.words.Detail;
import hornbook.report.words.FieldNames;
import hornbook.report.words.PageContext;
import hornbook.report.words.Phrases;
import hornbook.rulebook.fact.Bearing;
import java.util.ArrayList;
import java.util.List;

/** Says why a job sheet is refused. */
public final class PlanRefusal {
  private PlanRefusal() {}

  /** {@code left fore: a nailed shoe is ruled out}. */
  public static String what(Plan plan) {
    List<String> labels = plan.refused().stream().map(one -> label(plan, one)).distinct().toList();
    return FieldNames.of(plan.foot().limb())
        + ": "
        + String.join(" and ", labels)
        + (labels.size() == 1 ? " is" : " are")
        + " ruled out";
  }

  /** Every reason that rules it out, a line each. */
  public static List<String> why(Plan plan, Units units) {
    Phrases phrases = new Phrases(plan.advice().rulebook(), units);
    List<String> why = new ArrayList<>();
    for (OptionAdvice one : plan.refused()) {
      for (ReasonGiven reason : one.reasons()) {
        if (reason.bearing() == Bearing.RULES_OUT) {
          why.add(phrases.says(reason.says()) + " [" + reason.rule() + "]");
        }
      }
    }
    return why.stream().distinct().toList();
  }

  private static String label(Plan plan, OptionAdvice one) {
    return PageContext.of(plan.advice(), Units.MM, Detail.USUAL).label(one.id());
  }
}
