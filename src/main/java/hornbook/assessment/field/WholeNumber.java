package hornbook.assessment.field;

import hornbook.assessment.tree.LocatedValue.Scalar;
import hornbook.assessment.tree.LocatedValue.Token;

/**
 * A whole number within bounds.
 *
 * @param unit what is counted, as limits name it: days, years, grade; an empty text for a number
 */
public record WholeNumber(int least, int most, String unit) implements ScalarKind {
  @Override
  public Class<?> type() {
    return Integer.class;
  }

  @Override
  public Taken take(Scalar scalar) {
    if (scalar.token() == Token.NUMBER) {
      double number = Double.parseDouble(scalar.text());
      if (number == Math.rint(number)
          && Math.abs(number) < Integer.MAX_VALUE
          && holds((int) number)) {
        return new Taken.Value((int) number);
      }
    }
    return refuse(scalar);
  }

  @Override
  public boolean holds(Object value) {
    return (Integer) value >= least && (Integer) value <= most;
  }

  @Override
  public String allowed() {
    return "a whole number from " + least + " to " + most + ", without quotes";
  }

  @Override
  public String write(Object value) {
    return value.toString();
  }
}
