package hornbook.study.measure;

import hornbook.rulebook.compile.MissingFromRulebook;
import hornbook.rulebook.fact.Limit;
import java.util.Map;

/**
 * How measuring errs: normally, about what was noted. A stated error holds so many standard
 * deviations; a part of each error's variance belongs to the tool, and is the same in all that one
 * tool measured that day.
 *
 * @param deviations the limit that tells how many standard deviations a stated error holds
 * @param shared the limit that tells the tool's part of the variance, in per cent
 */
public record MeasuringErrors(Limit deviations, Limit shared) {

  public static MeasuringErrors of(Map<String, Limit> limits) {
    return new MeasuringErrors(
        MissingFromRulebook.limit(limits, "error.deviations"),
        MissingFromRulebook.limit(limits, "error.shared"));
  }

  /** The standard deviation of a measure, in the unit the records keep. */
  public double deviation(Measurement measurement) {
    return measurement.plusMinus() / deviations.value();
  }

  /**
   * A normal deviate from that of the tool and that of the measure itself, both standard: it is
   * standard too, and two measures by one tool correlate by the shared part.
   */
  public double joined(double tool, double own) {
    double part = shared.value() / 100;
    return Math.sqrt(part) * tool + Math.sqrt(1 - part) * own;
  }
}
