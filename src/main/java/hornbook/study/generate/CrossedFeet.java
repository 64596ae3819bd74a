package hornbook.study.generate;

import hornbook.assessment.Assessment;
import hornbook.assessment.Foot;
import hornbook.assessment.field.FieldValue;
import hornbook.assessment.field.Fields;
import hornbook.assessment.read.AssessmentEdit;
import java.util.List;
import java.util.Set;
import org.apache.commons.rng.UniformRandomProvider;

/** Crosses two known feet: one as it is, with much of what is known of another laid over it. */
final class CrossedFeet {
  private static final double TAKEN = 0.7;

  /** What has to come from one foot, or it would contradict itself. */
  private static final Set<String> OF_A_PIECE =
      Set.of("wall", "measures.bearingLength", "measures.width", "measures.toeToWidest");

  private final List<Assessment> known;

  CrossedFeet(List<Assessment> known) {
    this.known = List.copyOf(known);
  }

  Assessment foot(UniformRandomProvider random) {
    Assessment under = known.get(random.nextInt(known.size()));
    Assessment over = known.get(random.nextInt(known.size()));
    Assessment crossed = under;
    for (FieldValue value : Fields.values(over).toList()) {
      String path = value.path();
      boolean taken =
          value.value() != null && random.nextDouble() < TAKEN && ofHorseOrFirstFoot(path);
      if (taken && AssessmentEdit.of(path).value(crossed) == null
          || taken && random.nextBoolean()) {
        crossed = AssessmentEdit.of(path).with(crossed, value.value());
      }
    }
    return random.nextBoolean() ? withEdgeOf(over, crossed) : crossed;
  }

  /** Ages are left as they are: a horse has one. */
  private static boolean ofHorseOrFirstFoot(String path) {
    if (path.startsWith("feet[")) {
      String own = path.substring(path.indexOf(']') + 2);
      boolean row = own.contains("[") || own.equals("limb") || OF_A_PIECE.contains(own);
      return path.startsWith("feet[0].") && !row;
    }
    return !path.startsWith("horse.age") && !path.contains("[");
  }

  private static Assessment withEdgeOf(Assessment over, Assessment crossed) {
    Foot from = over.feet().get(0);
    if (from.wall() == null) {
      return crossed;
    }
    Assessment edged = crossed;
    for (String own : OF_A_PIECE) {
      AssessmentEdit edit = AssessmentEdit.of("feet[0]." + own);
      edged = edit.with(edged, edit.value(over));
    }
    return edged;
  }
}
