package hornbook.foot.shape;

/**
 * The arc (p cos t, q sin t) of an ellipse from t = 0. Its length has no closed form; sixteen-point
 * Gauss-Legendre quadrature of the speed is exact to rounding for any foot.
 *
 * @param p half axis in mm, along t = 0
 * @param q half axis in mm, along t = a right angle
 */
record EllipseArc(double p, double q) {
  private static final double[] NODES = {
    0.0950125098376374, 0.2816035507792589, 0.4580167776572274, 0.6178762444026438,
    0.7554044083550030, 0.8656312023878318, 0.9445750230732326, 0.9894009349916499
  };
  private static final double[] WEIGHTS = {
    0.1894506104550685, 0.1826034150449236, 0.1691565193950025, 0.1495959888165767,
    0.1246289712555339, 0.0951585116824928, 0.0622535239386479, 0.0271524594117541
  };
  private static final int MOST_STEPS = 30;

  /** Length in mm from 0 to t, in radians. */
  double length(double t) {
    double half = t / 2;
    double sum = 0;
    for (int i = 0; i < NODES.length; i++) {
      sum += WEIGHTS[i] * (speed(half - half * NODES[i]) + speed(half + half * NODES[i]));
    }
    return half * sum;
  }

  /** The t, in radians, at a length in mm from 0: Newton's method, kept between 0 and most. */
  double at(double length, double most) {
    double t = most * length / length(most);
    for (int i = 0; i < MOST_STEPS; i++) {
      double step = (length(t) - length) / speed(t);
      t = Math.min(most, Math.max(0, t - step));
      if (Math.abs(step) < 1e-13) {
        break;
      }
    }
    return t;
  }

  private double speed(double t) {
    double sin = p * Math.sin(t);
    double cos = q * Math.cos(t);
    return Math.sqrt(sin * sin + cos * cos);
  }
}
