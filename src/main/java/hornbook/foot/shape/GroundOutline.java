package hornbook.foot.shape;

import static java.lang.Math.acos;
import static java.lang.Math.asin;
import static java.lang.Math.cos;
import static java.lang.Math.sin;
import static java.lang.Math.sqrt;

import hornbook.assessment.Measures;
import hornbook.foot.number.Unknown;

/**
 * The outline of the bearing edge on the ground, alike on both sides: half an ellipse ahead of the
 * widest part, running smoothly into half an ellipse behind it, which passes through the heel
 * buttresses at the end of the bearing length and closes behind them, at the bulbs. A fore foot,
 * widest near its middle, comes out near-circular in front, a hind foot, widest two thirds back,
 * pointed (lungwitz-1913, usda-1916). The curve is our own model of a foot: only its width, bearing
 * length and widest part are measured. Distances along the edge run from the middle of the toe, in
 * mm, back to the buttress.
 */
public final class GroundOutline {
  /** What computing may add to a distance that lies at the very end, mm. */
  private static final double ROUNDING = 1e-9;

  private final double bearingLength;
  private final double halfWidth;
  private final double toeToWidest;
  private final boolean widestAssumed;
  private final double heelHalfWidth;
  private final double rearAxis;
  private final double rearAngle;
  private final EllipseArc front;
  private final EllipseArc rear;
  private final double edgeToWidest;
  private final double edgeLength;

  private GroundOutline(
      double bearingLength,
      double width,
      double toeToWidest,
      boolean widestAssumed,
      OutlineShape shape) {
    this.bearingLength = bearingLength;
    this.halfWidth = width / 2;
    this.toeToWidest = toeToWidest;
    this.widestAssumed = widestAssumed;
    this.heelHalfWidth = halfWidth * shape.heelWidth();
    this.rearAngle = acos(shape.heelWidth());
    this.rearAxis = (bearingLength - toeToWidest) / sin(rearAngle);
    this.front = new EllipseArc(toeToWidest, halfWidth);
    this.rear = new EllipseArc(halfWidth, rearAxis);
    this.edgeToWidest = front.length(Math.PI / 2);
    this.edgeLength = edgeToWidest + rear.length(rearAngle);
  }

  /**
   * The outline of a foot, or null when bearing length or width are unknown or no foot can have the
   * measures (the widest part not between toe and heel). An unknown widest part is assumed.
   */
  public static GroundOutline of(Measures measures, boolean fore, OutlineShape shape) {
    double length = Unknown.or(measures.bearingLength());
    double width = Unknown.or(measures.width());
    boolean assumed = measures.toeToWidest() == null;
    double widest = assumed ? length * shape.widest(fore) : measures.toeToWidest();
    boolean possible = width > 0 && widest > 0 && widest < length && finite(width, length);
    return possible ? new GroundOutline(length, width, widest, assumed, shape) : null;
  }

  private static boolean finite(double width, double length) {
    return Double.isFinite(width) && Double.isFinite(length);
  }

  public double bearingLength() {
    return bearingLength;
  }

  public double width() {
    return 2 * halfWidth;
  }

  public double toeToWidest() {
    return toeToWidest;
  }

  /** Whether the place of the widest part was not measured. */
  public boolean widestAssumed() {
    return widestAssumed;
  }

  /** How far the heel buttresses stand apart, mm; assumed from the width. */
  public double heelWidth() {
    return 2 * heelHalfWidth;
  }

  /** Length of the edge of one side, middle of the toe to heel buttress, mm. */
  public double edgeLength() {
    return edgeLength;
  }

  /** Length of the edge of one side, middle of the toe to the widest part, mm. */
  public double edgeToWidest() {
    return edgeToWidest;
  }

  /**
   * The distance along the edge of the point that lies so far back along the bearing length, mm.
   *
   * @throws IllegalArgumentException when back is not from 0 to the bearing length
   */
  public double edgeAt(double back) {
    check(back, bearingLength);
    if (back <= toeToWidest) {
      return front.length(acos(Math.max(0, 1 - back / toeToWidest)));
    }
    double t = asin(Math.min(1, (back - toeToWidest) / rearAxis));
    return edgeToWidest + rear.length(t);
  }

  /**
   * The point so far along the edge, mm.
   *
   * @throws IllegalArgumentException when distance is not from 0 to the edge length
   */
  public EdgePoint at(double distance) {
    check(distance, edgeLength);
    if (distance <= edgeToWidest) {
      double t = front.at(distance, Math.PI / 2);
      return new EdgePoint(toeToWidest * (1 - cos(t)), halfWidth * sin(t));
    }
    double t = rear.at(distance - edgeToWidest, rearAngle);
    return new EdgePoint(toeToWidest + rearAxis * sin(t), halfWidth * cos(t));
  }

  /** Half the width of the foot, so far back along the bearing length or behind it, mm. */
  public double halfWidthAt(double back) {
    check(back, toeToWidest + rearAxis);
    double axis = back <= toeToWidest ? toeToWidest : rearAxis;
    double share = (back - toeToWidest) / axis;
    return halfWidth * sqrt(1 - share * share);
  }

  private static void check(double value, double most) {
    if (!(value >= 0 && value <= most + ROUNDING)) {
      throw new IllegalArgumentException(value + " is not from 0 to " + most);
    }
  }
}
