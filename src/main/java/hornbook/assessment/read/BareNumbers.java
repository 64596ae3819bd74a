package hornbook.assessment.read;

import hornbook.assessment.field.Amount;
import hornbook.assessment.quantity.Dimension;
import hornbook.assessment.quantity.Quantity;
import hornbook.assessment.quantity.Units;
import hornbook.assessment.tree.Fault;
import hornbook.assessment.tree.LocatedValue.Scalar;
import java.util.ArrayList;
import java.util.List;

/**
 * Lengths and weights written without a unit. In a file that elsewhere has inches, feet or pounds
 * and does not say its units, nobody can tell what such a number is: 0.35 is no wall in mm. What is
 * set from the command line says nothing of how the file was written.
 */
public final class BareNumbers {
  private final List<Scalar> without = new ArrayList<>();
  private final List<String> allowed = new ArrayList<>();
  private boolean imperial;

  /** Takes note of how a length or a weight is written, and gives it back. Nothing is nothing. */
  public Scalar note(Scalar scalar, Amount amount) {
    boolean tells = amount.dimension() == Dimension.LENGTH || amount.dimension() == Dimension.MASS;
    Quantity written = tells ? Amount.written(scalar) : null;
    if (written != null && written.unit() == null && written.number() != 0) {
      without.add(scalar);
      allowed.add(amount.allowed());
    } else if (written != null && written.unit() != null) {
      imperial |= !scalar.place().inSetting() && Units.INCH.knows(written.unit());
    }
    return scalar;
  }

  public void refuse(List<Fault> faults) {
    for (int i = 0; imperial && i < without.size(); i++) {
      Scalar scalar = without.get(i);
      faults.add(
          Fault.at(
              scalar.place(),
              scalar.path(),
              scalar.text() + " without a unit, in a file that also has inches or pounds",
              allowed.get(i) + " with its unit, or units: mm or units: inch for the whole file"));
    }
  }
}
