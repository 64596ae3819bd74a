package hornbook.assessment;

import hornbook.assessment.quantity.Units;
import java.util.List;

/**
 * One visit to one horse, as written down. Groups are never null; a value that was not looked at is
 * null. Amounts are kept in mm, kg and degrees Celsius, whatever the file was written in.
 *
 * @param units those of a number without a unit in the file; null when the file does not say
 */
public record Assessment(Units units, Horse horse, Visit visit, List<Foot> feet, Kit kit) {
  public java.util.Optional<Foot> foot(Limb limb) {
    for (Foot foot : feet) {
      if (foot.limb() == limb) {
        return java.util.Optional.of(foot);
      }
    }
    return java.util.Optional.empty();
  }
}
