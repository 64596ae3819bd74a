package hornbook.interview;

import hornbook.assessment.Assessment;
import hornbook.assessment.Foot;
import hornbook.assessment.Limb;
import hornbook.assessment.field.FieldValue;
import hornbook.assessment.field.Fields;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;

/** Tells the feet to be advised on from those that are in the file to be compared with. */
final class ComparedFeet {
  /** What is asked of a foot only for the sake of the other of its pair. */
  private static final Set<String> FIELDS =
      Set.of("limb", "lameness", "lameForDays", "toeAngle", "frogState");

  private ComparedFeet() {}

  /** The feet to be advised on. */
  static Set<Limb> feet(Assessment assessment) {
    Set<Limb> feet = EnumSet.noneOf(Limb.class);
    for (Foot foot : assessment.feet()) {
      Optional<Foot> other = assessment.foot(foot.limb().pair());
      boolean only = known(foot, true) > 1 && known(foot, false) == 0;
      if (!only || other.isEmpty() || known(other.get(), false) == 0) {
        feet.add(foot.limb());
      }
    }
    return feet;
  }

  private static long known(Foot foot, boolean compared) {
    return Fields.values(foot, 0)
        .filter(value -> value.value() != null)
        .map(FieldValue::field)
        .filter(field -> FIELDS.contains(field.name()) == compared)
        .count();
  }
}
