package hornbook.study.exercise;

import hornbook.assessment.Assessment;
import hornbook.assessment.form.BlankAssessment;
import hornbook.assessment.quantity.Units;
import java.util.ArrayList;
import java.util.List;

/** Writes what is known of an assessment, and nothing else: no remarks, no line on the unknown. */
final class KnownYaml {
  private KnownYaml() {}

  /** The lines, each so many columns further in. */
  static String of(Assessment assessment, Units units, int indent) {
    List<String> known = new ArrayList<>();
    for (String line : BlankAssessment.write(assessment, units, null).split("\n")) {
      String bare = line.replaceFirst("(^|\\s)#.*$", "").stripTrailing();
      if (!bare.isBlank() && !bare.matches(".*: unknown")) {
        known.add(bare);
      }
    }
    for (int at = known.size() - 1; at >= 0; at--) {
      String line = known.get(at);
      String next = at + 1 < known.size() ? known.get(at + 1) : "";
      if (line.endsWith(":") && depth(next) <= depth(line)) {
        known.remove(at);
      }
    }
    StringBuilder text = new StringBuilder();
    known.forEach(line -> text.append(" ".repeat(indent)).append(line).append('\n'));
    return text.toString();
  }

  private static int depth(String line) {
    return line.length() - line.stripLeading().length();
  }
}
