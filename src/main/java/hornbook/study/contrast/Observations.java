package hornbook.study.contrast;

import hornbook.assessment.Assessment;
import hornbook.assessment.field.Field;
import hornbook.assessment.field.FieldValue;
import hornbook.assessment.field.Fields;
import hornbook.assessment.field.Flag;
import hornbook.assessment.field.OneWord;
import hornbook.assessment.field.WholeNumber;
import hornbook.assessment.field.WordList;
import hornbook.rulebook.ReadingKind;
import hornbook.rulebook.compile.MissingFromRulebook;
import hornbook.rulebook.fact.Limit;
import hornbook.study.measure.Measurement;
import hornbook.study.measure.Measurements;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Finds all that was measured or seen and bears on one foot: on the foot itself, on the horse and
 * the visit, and the little that is asked of the other foot of its pair. What is in the van, and
 * what is so whatever anybody sees, is no part of it.
 */
final class Observations {
  private static final String PAIR = "pair.";
  private static final Set<String> OF_PAIR = new HashSet<>(Set.of("signs.frogState"));

  static {
    for (ReadingKind kind : ReadingKind.values()) {
      kind.fields().stream()
          .filter(field -> field.startsWith(PAIR))
          .forEach(field -> OF_PAIR.add(field.substring(PAIR.length())));
    }
  }

  private Observations() {}

  /**
   * The signs and counts in the order of the table of fields, behind what was measured.
   *
   * @param foot its place in the assessment
   * @param limits those that hold for the foot, with the measuring errors among them
   */
  static List<Observation> of(Assessment assessment, int foot, Map<String, Limit> limits) {
    List<Observation> all = new ArrayList<>();
    for (Measurement measurement : Measurements.of(assessment, limits)) {
      if (bears(measurement.path(), assessment, foot)) {
        all.add(Observation.measured(measurement));
      }
    }
    Fields.values(assessment)
        .filter(field -> field.value() != null && !field.field().fixed())
        .filter(field -> bears(field.path(), assessment, foot))
        .forEach(field -> add(field, limits, all));
    return List.copyOf(all);
  }

  /** The fields whose values are left alone, each once. */
  static List<Field> leftAlone(Assessment assessment) {
    return Fields.values(assessment)
        .filter(field -> field.value() != null && field.field().fixed())
        .map(FieldValue::field)
        .distinct()
        .toList();
  }

  private static void add(FieldValue field, Map<String, Limit> limits, List<Observation> to) {
    boolean word =
        field.field().kind() instanceof OneWord
            || field.field().kind() instanceof Flag
            || field.field().kind() instanceof WordList;
    if (word || field.field().kind() instanceof WholeNumber) {
      Limit error = MissingFromRulebook.limit(limits, word ? "error.word" : "error.grade");
      to.add(Observation.seen(field.path(), field.field(), field.value(), error));
    }
  }

  private static boolean bears(String path, Assessment assessment, int foot) {
    if (!path.startsWith("feet[")) {
      return !path.startsWith("kit.");
    }
    int end = path.indexOf("].");
    int at = Integer.parseInt(path.substring("feet[".length(), end));
    boolean pair = assessment.feet().get(at).limb() == assessment.feet().get(foot).limb().pair();
    return at == foot || pair && OF_PAIR.contains(path.substring(end + 2));
  }
}
