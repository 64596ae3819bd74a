package hornbook.foot;

/** From the boxed values of the input, where null is unknown, to primitives, where NaN is. */
final class Known {
  private Known() {}

  static double orNaN(Double value) {
    return value == null ? Double.NaN : value;
  }

  static double orNaN(Integer value) {
    return value == null ? Double.NaN : value;
  }
}
