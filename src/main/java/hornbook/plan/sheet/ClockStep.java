package hornbook.plan.sheet;

import hornbook.plan.figure.Figure;

/**
 * A step of the work.
 *
 * @param minutes how long it takes, or when it comes
 * @param counted from what the minutes are counted
 */
public record ClockStep(SheetLine says, Figure minutes, Counted counted) {

  /** What the minutes of a step are. */
  public enum Counted {
    /** How long it takes. */
    LASTS,
    /** After the tape was wetted. */
    FROM_WETTING,
    /** After the adhesive was mixed. */
    FROM_MIXING
  }
}
