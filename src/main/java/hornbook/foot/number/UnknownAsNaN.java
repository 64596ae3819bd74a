package hornbook.foot.number;

/** From the boxed values of the input, where null is unknown, to primitives, where NaN is. */
public final class UnknownAsNaN {
  private UnknownAsNaN() {}

  public static double orNaN(Double value) {
    return value == null ? Double.NaN : value;
  }

  public static double orNaN(Integer value) {
    return value == null ? Double.NaN : value;
  }
}
