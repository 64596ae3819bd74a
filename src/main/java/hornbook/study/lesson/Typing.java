package hornbook.study.lesson;

import hornbook.assessment.tree.Nearest;
import hornbook.study.exercise.DaysUntilVisit;
import hornbook.study.exercise.FootAnswer;
import hornbook.study.exercise.Vocabulary;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads the words of a typed answer: by name, or by their numbers in the list shown. */
final class Typing {
  private static final String RULE = "the id of a rule, such as N003";

  /** What is ruled out, with anything behind a colon, or ids of rules without one. */
  private static final Pattern WITH_RULES =
      Pattern.compile("([^:]*):(.*)|([^:]*?)((?:\\s+[A-Za-z]\\d{3})*)");

  private Typing() {}

  /**
   * What was read.
   *
   * @param refused null where every word is known
   */
  record Words(List<String> words, LessonReply.Refused refused) {}

  /** Words of a list; {@code none} is the empty one. */
  static Words of(String line, Step step) {
    if (step.kind().list() && line.equalsIgnoreCase(Vocabulary.NONE)) {
      return new Words(List.of(), null);
    }
    List<String> words = new ArrayList<>();
    for (String part : parts(line, step)) {
      String word = word(part, step);
      if (word == null) {
        String nearest = Nearest.of(part, step.words());
        return new Words(List.of(), new LessonReply.Refused(part, allowed(step), nearest));
      }
      if (!words.contains(word)) {
        words.add(word);
      }
    }
    return new Words(List.copyOf(words), null);
  }

  /**
   * What is ruled out, each with the rules for it behind: {@code nail-on: N003 N001, cast-wrap}.
   * Read back as the word and its rules with spaces between.
   */
  static Words ruledOut(String line, Step step, List<String> rules) {
    List<String> words = new ArrayList<>();
    for (String part :
        line.equalsIgnoreCase(Vocabulary.NONE) ? new String[0] : line.split("[,;]")) {
      if (part.isBlank()) {
        continue;
      }
      Matcher matcher = WITH_RULES.matcher(part.strip());
      matcher.matches();
      String named = matcher.group(1) == null ? matcher.group(3) : matcher.group(1);
      String behind = matcher.group(1) == null ? matcher.group(4) : matcher.group(2);
      String word = word(named.strip(), step);
      if (word == null) {
        String nearest = Nearest.of(named.strip(), step.words());
        return new Words(List.of(), new LessonReply.Refused(named.strip(), allowed(step), nearest));
      }
      StringBuilder with = new StringBuilder(word);
      for (String written : behind.strip().split("\\s+")) {
        String id = written.toUpperCase(Locale.ROOT);
        if (!id.isEmpty() && !rules.contains(id)) {
          String nearest = Nearest.of(id, rules);
          return new Words(List.of(), new LessonReply.Refused(id, RULE, nearest));
        }
        with.append(id.isEmpty() ? "" : " " + id);
      }
      words.add(with.toString());
    }
    return new Words(List.copyOf(words), null);
  }

  /** When to come again. */
  static Words days(String line) {
    return DaysUntilVisit.of(line) == null
        ? new Words(List.of(), new LessonReply.Refused(line, DaysUntilVisit.ALLOWED, null))
        : new Words(List.of(line), null);
  }

  private static List<String> parts(String line, Step step) {
    boolean list = step.kind().list();
    List<String> parts = new ArrayList<>();
    for (String part : list ? line.split("[,;]") : new String[] {line}) {
      if (!part.isBlank()) {
        parts.add(part.strip());
      }
    }
    boolean ids =
        parts.size() == 1 && list && parts.get(0).matches("([A-Za-z]\\d{3}\\s+)+[A-Za-z]\\d{3}");
    return ids ? List.of(parts.get(0).split("\\s+")) : parts;
  }

  private static String word(String part, Step step) {
    if (part.matches("\\d{1,3}") && step.words().size() <= 20) {
      int number = Integer.parseInt(part);
      return number >= 1 && number <= step.words().size() ? step.words().get(number - 1) : null;
    }
    String word = part.toLowerCase(Locale.ROOT).replace(' ', '-');
    if (step.kind() == Step.Kind.BECAUSE) {
      String id = part.toUpperCase(Locale.ROOT);
      return FootAnswer.rule(id) ? (step.words().contains(id) ? id : null) : part;
    }
    return step.words().contains(word) ? word : null;
  }

  private static String allowed(Step step) {
    return step.kind() == Step.Kind.BECAUSE
        ? RULE + ", or your own words"
        : step.words().size() <= 20
            ? String.join(", ", step.words())
            : "one of " + step.words().size() + " words; ? shows them";
  }
}
