package hornbook.study.exercise;

import hornbook.advice.Advice;
import hornbook.advice.FootAdvice;
import hornbook.assessment.Assessment;
import hornbook.assessment.quantity.Units;
import hornbook.assessment.read.AssessmentEdit;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** Writes a case that was drawn as a case file, with the rule base's answer. */
public final class MadeCase {
  private MadeCase() {}

  /** The assessment with another name for the horse. */
  public static Assessment named(Assessment assessment, String name) {
    return AssessmentEdit.of("horse.name").with(assessment, name);
  }

  /**
   * The file.
   *
   * @param drawn how it was drawn, in words
   */
  public static String yaml(
      String title, Assessment assessment, Advice advice, String drawn, List<String> changed) {
    StringBuilder text = new StringBuilder();
    text.append("title: ").append(quoted(title)).append('\n');
    String name = assessment.horse().name();
    text.append("story: ")
        .append(
            quoted(
                "A made-up foot. Everything that was seen and measured on "
                    + name
                    + " stands in the assessment; what is not there was not looked at."))
        .append('\n');
    text.append("level: 2\ntopics: [").append(String.join(", ", topics(advice))).append("]\n");
    text.append("assessment:\n").append(KnownYaml.of(assessment, Units.MM, 2));
    text.append("expected:\n");
    for (FootAdvice foot : advice.feet()) {
      expected(foot, ModelAnswer.of(advice, foot, null), text);
    }
    text.append("teaching:\n  notes:\n    - ").append(quoted(drawn)).append('\n');
    for (String change : changed) {
      text.append("    - ").append(quoted("Changed: " + change)).append('\n');
    }
    return text.toString();
  }

  private static void expected(FootAdvice foot, FootAnswer model, StringBuilder text) {
    text.append("  ").append(foot.limb().word()).append(":\n");
    text.append("    firstChoice: ").append(model.technique()).append('\n');
    text.append("    urgency: ").append(model.vet()).append('\n');
    text.append("    ruledOut: [").append(String.join(", ", model.ruledOut().keySet()));
    text.append("]\n    supports: [").append(String.join(", ", model.supports())).append("]\n");
  }

  /** The topics of the rules that carry the answer. */
  private static Set<String> topics(Advice advice) {
    Set<String> topics = new TreeSet<>();
    for (FootAdvice foot : advice.feet()) {
      FootAnswer model = ModelAnswer.of(advice, foot, null);
      model.because().forEach(rule -> topics.add(advice.rulebook().rules().get(rule).topic()));
      foot.referrals()
          .forEach(one -> topics.add(advice.rulebook().rules().get(one.rule()).topic()));
    }
    return topics;
  }

  private static String quoted(String words) {
    return '"' + words.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
  }
}
