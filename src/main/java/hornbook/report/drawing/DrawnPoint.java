package hornbook.report.drawing;

import static java.lang.Math.cos;
import static java.lang.Math.sin;
import static java.lang.Math.toRadians;

/**
 * A point of a drawing, in mm; its numbers may be unknown.
 *
 * @param x to the right
 * @param y upwards
 */
record DrawnPoint(double x, double y) {

  /** So far from here, at an angle that opens from the right upwards, deg. */
  DrawnPoint at(double angle, double length) {
    double a = toRadians(angle);
    return new DrawnPoint(x + length * cos(a), y + length * sin(a));
  }

  DrawnPoint moved(double right, double higher) {
    return new DrawnPoint(x + right, y + higher);
  }

  /** Turned about the origin, deg; above 0 from the right upwards. */
  DrawnPoint turned(double angle) {
    double a = toRadians(angle);
    return new DrawnPoint(x * cos(a) - y * sin(a), x * sin(a) + y * cos(a));
  }

  boolean known() {
    return Double.isFinite(x) && Double.isFinite(y);
  }

  double distance(DrawnPoint other) {
    return Math.hypot(other.x - x, other.y - y);
  }

  DrawnPoint between(DrawnPoint other) {
    return new DrawnPoint((x + other.x) / 2, (y + other.y) / 2);
  }
}
