package hornbook.foot;

/**
 * What an ordinary trim takes off the wall, in mm along the wall.
 *
 * @param usual where neither the farrier said nor the days since shoeing tell
 * @param most that is worked out from days and growth, however long ago the foot was shod
 */
public record TrimLimits(double usual, double most) {}
