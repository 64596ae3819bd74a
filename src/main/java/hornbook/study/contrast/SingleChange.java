package hornbook.study.contrast;

import hornbook.assessment.Assessment;
import java.util.BitSet;

/**
 * One thing measured or seen otherwise.
 *
 * @param value what it would be
 * @param errors how far that is from what was noted, in measuring errors
 * @param met the conditions of the rules that the foot would then meet
 */
public record SingleChange(Observation what, Object value, double errors, BitSet met) {
  public Assessment on(Assessment assessment) {
    return what.with(assessment, value);
  }

  /** Whether a number is above the one noted; words have no direction. */
  boolean up() {
    return value instanceof Number number
        && number.doubleValue() > ((Number) what.noted()).doubleValue();
  }

  /** Whether the computing of wall and nails takes it, where little things add up. */
  boolean ofTheWall() {
    String path = what.path();
    return path.contains("].wall[") || path.contains("].cracks[");
  }
}
