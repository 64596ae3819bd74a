package hornbook.report.drawing;

import hornbook.advice.Advice;
import hornbook.advice.FootAdvice;
import hornbook.assessment.Foot;
import hornbook.foot.FootReadings;
import hornbook.foot.number.Unknown;
import hornbook.foot.shape.AddedMaterial;
import hornbook.plan.Plan;
import hornbook.report.words.Amounts;
import hornbook.report.words.FieldNames;
import hornbook.report.words.HorseAndDay;
import hornbook.rulebook.fact.Limit;
import java.time.LocalDate;

/**
 * The foot that is drawn, as it was measured, and what a job makes of it.
 *
 * @param plan the job; null for the foot as it is
 */
record DrawnFoot(
    Advice advice, FootAdvice given, Plan plan, FootReadings readings, Amounts amounts) {

  static DrawnFoot of(Advice advice, FootAdvice given, Plan plan, Amounts amounts) {
    Foot foot = advice.assessment().feet().get(given.index());
    FootReadings readings = FootReadings.of(advice.assessment(), foot, given.sheet().computing());
    return new DrawnFoot(advice, given, plan, readings, amounts);
  }

  Foot foot() {
    return advice.assessment().feet().get(given.index());
  }

  /** {@code left fore of Tansy, 14 March 2026}. */
  String name() {
    return FieldNames.of(foot().limb()) + " of " + HorseAndDay.of(advice);
  }

  /** Begins every id of a drawing of this foot. */
  String id(Picture picture) {
    return foot().limb().word() + "-" + picture.name().toLowerCase(java.util.Locale.ROOT);
  }

  LocalDate date() {
    return advice.assessment().visit().date();
  }

  /** Whether there is a job with work in it. */
  boolean worked() {
    return plan != null && plan.added() != null;
  }

  AddedMaterial build() {
    return worked() ? plan.added() : AddedMaterial.NOTHING;
  }

  /** A limit of the trade for such a foot; unknown where the rule base has none. */
  double limit(String id) {
    Limit limit = given.sheet().limits().get(id);
    return limit == null ? Unknown.NUMBER : limit.value();
  }

  String mm(double length) {
    return amounts.text(length, "mm");
  }

  String degrees(double angle) {
    return amounts.text(angle, "deg");
  }
}
