package hornbook.report.drawing;

import hornbook.advice.Advice;
import hornbook.advice.FootAdvice;
import hornbook.plan.Plan;
import hornbook.report.words.Amounts;
import java.util.ArrayList;
import java.util.List;

/** The drawings of a foot. What was not measured is left out of them, and they say so. */
public final class Drawings {
  private Drawings() {}

  /** The foot as measured, in the order of {@link Picture}. */
  public static List<Drawing> of(Advice advice, FootAdvice foot, Amounts amounts) {
    DrawnFoot subject = DrawnFoot.of(advice, foot, null, amounts);
    return List.of(
        GroundView.of(subject),
        SideView.before(subject),
        WallUnrolled.of(subject),
        GrowthCalendar.of(subject));
  }

  /** The same with a job done; from the side as measured and afterwards. */
  public static List<Drawing> of(Plan plan, Amounts amounts) {
    DrawnFoot subject = DrawnFoot.of(plan.advice(), plan.foot(), plan, amounts);
    List<Drawing> drawings = new ArrayList<>();
    drawings.add(GroundView.of(subject));
    drawings.add(SideView.before(subject));
    if (subject.worked()) {
      drawings.add(SideView.after(subject));
    }
    drawings.add(WallUnrolled.of(subject));
    drawings.add(GrowthCalendar.of(subject));
    return drawings;
  }
}
