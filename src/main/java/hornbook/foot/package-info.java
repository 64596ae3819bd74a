/**
 * All computing on the foot: pure functions over the records of the assessment.
 *
 * <p>Lengths are in mm, angles in degrees, weights in kg, forces in newtons, shares in per cent
 * where a reading is meant and in parts of one where an argument is. A number that cannot be known
 * because something it rests on was not measured is unknown, or {@link
 * hornbook.foot.number.Interval#UNKNOWN}, and stays so through every later step; a part that cannot
 * be drawn at all is null. Nothing here throws because a measure is missing.
 *
 * <p>Limits of the trade are arguments, gathered in {@link hornbook.foot.FootLimits}; none stands
 * in the code.
 *
 * <p>May use: {@code assessment}, {@code foot.number}, {@code foot.shape}, {@code foot.wall}.
 *
 * <p>Begin with {@link hornbook.foot.FootReadings}.
 */
package hornbook.foot;
