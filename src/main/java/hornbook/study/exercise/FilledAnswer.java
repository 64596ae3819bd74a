package hornbook.study.exercise;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Writes an answer as the file it would be read from. */
public final class FilledAnswer {
  private FilledAnswer() {}

  public static String yaml(LearnerAnswer answer) {
    StringBuilder text = new StringBuilder("format: " + LearnerAnswer.FORMAT + "\n");
    line(text, "", "case", answer.caseName());
    line(text, "", "by", answer.by() == null ? null : quoted(answer.by()));
    text.append("feet:\n");
    for (FootAnswer foot : answer.feet()) {
      text.append("  - limb: ").append(foot.limb().word()).append('\n');
      line(text, "    ", "findings", list(foot.findings()));
      line(text, "    ", "vet", foot.vet());
      line(text, "    ", "vetFor", list(foot.vetFor()));
      line(text, "    ", "technique", foot.technique());
      line(text, "    ", "because", list(foot.because()));
      line(text, "    ", "ruledOut", map(foot.ruledOut()));
      line(text, "    ", "supports", list(foot.supports()));
      line(text, "    ", "cautions", list(foot.cautions()));
      line(text, "    ", "ask", list(foot.ask()));
      line(text, "    ", "nextVisit", foot.nextVisit() == null ? null : days(foot.nextVisit()));
      line(text, "    ", "departs", foot.departs() == null ? null : quoted(foot.departs()));
    }
    return text.toString();
  }

  private static void line(StringBuilder text, String indent, String key, String value) {
    if (value != null) {
      text.append(indent).append(key).append(": ").append(value).append('\n');
    }
  }

  private static String days(double days) {
    return Math.round(days) + " days";
  }

  private static String list(List<String> words) {
    return words == null
        ? null
        : words.stream().map(FilledAnswer::word).collect(Collectors.joining(", ", "[", "]"));
  }

  private static String map(Map<String, List<String>> map) {
    return map == null
        ? null
        : map.entrySet().stream()
            .map(one -> one.getKey() + ": " + list(one.getValue()))
            .collect(Collectors.joining(", ", "{", "}"));
  }

  private static String word(String word) {
    return word.matches("[A-Za-z][\\w.-]*") ? word : quoted(word);
  }

  private static String quoted(String words) {
    return '"' + words.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
  }
}
