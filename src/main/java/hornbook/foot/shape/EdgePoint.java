package hornbook.foot.shape;

/**
 * A point of the ground edge, in mm.
 *
 * @param back behind the middle of the toe, along the middle line of the foot
 * @param out sideways from that line
 */
public record EdgePoint(double back, double out) {}
