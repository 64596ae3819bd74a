package hornbook.assessment.read;

import hornbook.assessment.quantity.Quantity;
import hornbook.assessment.tree.Fault;
import hornbook.assessment.tree.LocatedValue;
import hornbook.assessment.tree.LocatedValue.Group;
import hornbook.assessment.tree.LocatedValue.Scalar;
import hornbook.assessment.tree.LocatedValue.Token;

/** A decimal comma within braces, where a comma ends a field: {@code {toeLength: 92,5 mm}}. */
final class SplitAtComma {
  private SplitAtComma() {}

  /** Whether a key is the second half of the number in front of it. */
  static boolean is(String key, String before, Group group) {
    return before != null
        && !key.isEmpty()
        && Character.isDigit(key.charAt(0))
        && group.get(key) instanceof Scalar nothing
        && nothing.token() == Token.NOTHING
        && group.get(before) instanceof Scalar number
        && number.token() == Token.NUMBER
        && Quantity.parse(key) != null;
  }

  static Fault fault(String key, String before, Group group) {
    String whole = ((Scalar) group.get(before)).text();
    String path = LocatedValue.under(group.path(), before);
    return Fault.at(
        group.get(before).place(),
        path,
        Fault.quote(whole + "," + key) + ", where the comma ends the field",
        "a decimal point within braces",
        whole + "." + key);
  }
}
