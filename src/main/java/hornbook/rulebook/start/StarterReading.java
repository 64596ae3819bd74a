package hornbook.rulebook.start;

import hornbook.assessment.field.Amount;
import hornbook.assessment.field.Field;
import hornbook.assessment.field.FieldHolder;
import hornbook.assessment.field.Fields;
import java.util.List;

/**
 * The number a rule begins with, and what its limit and its case say of it.
 *
 * @param field its name, as rules have it
 * @param group where it stands in an assessment: visit, or measures of the foot
 * @param unit the unit of the limit
 * @param limit the value of the limit
 * @param named the last part of the limit's id
 * @param label what the limit is
 * @param says the sentence of the rule
 * @param title the title of the rule
 * @param unknown when the rule is silent
 */
record StarterReading(
    String field,
    String group,
    String unit,
    int limit,
    String named,
    String label,
    String says,
    String title,
    String unknown) {
  private static final String MEASURES = "measures";

  /** The number of a rule whose author names none. */
  static final StarterReading LAST_VISIT =
      new StarterReading(
          "shodDaysAgo",
          "visit",
          "days",
          56,
          "days",
          "longest a foot is left",
          "Last done {found} ago; we let no foot go longer than {most}.",
          "Too long since the last visit",
          "nobody noted how long ago the foot was last done");

  /** The measures of a foot that a rule may begin with. */
  static List<String> measures() {
    FieldHolder measures = (FieldHolder) Fields.ofFoot(MEASURES).kind();
    return measures.fields().stream()
        .filter(field -> field.kind() instanceof Amount)
        .map(Field::name)
        .toList();
  }

  /** For one of the measures of a foot. */
  static StarterReading of(String measure) {
    Field field = Fields.ofFoot(MEASURES + "." + measure);
    Amount amount = (Amount) field.kind();
    return new StarterReading(
        measure,
        MEASURES,
        amount.dimension().kept().symbol(),
        (int) Math.rint(amount.bare().toKept(amount.example())),
        "most",
        "most we allow: " + field.label(),
        "The " + field.label() + " is {found}; we allow at most {most}.",
        "Over our limit: " + field.label(),
        "nobody measured the " + field.label());
  }

  /** The path of the field in the assessment of a case. */
  String path() {
    return (ofVisit() ? "" : "feet[0].") + group + "." + field;
  }

  private boolean ofVisit() {
    return this == LAST_VISIT;
  }

  /** A value of the field, in steps from the limit. */
  String value(int steps) {
    return limit + steps + (ofVisit() ? "" : " " + unit);
  }

  /** The visit and the foot of the case, the field some steps beyond the limit. */
  String foot() {
    String entry = group + ": {" + field + ": " + value(4) + "}\n";
    return ofVisit()
        ? "  " + entry + "  feet:\n    - limb: left-fore\n"
        : "  feet:\n    - limb: left-fore\n      " + entry;
  }
}
