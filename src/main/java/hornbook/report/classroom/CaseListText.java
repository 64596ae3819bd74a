package hornbook.report.classroom;

import hornbook.report.page.PlainPage;
import hornbook.rulebook.NamedOption;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.Topic;
import hornbook.rulebook.fact.Urgency;
import hornbook.study.exercise.Exercise;
import hornbook.study.exercise.Expected;
import hornbook.study.exercise.Vocabulary;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Stream;

/** The list of the teaching cases, and what of the trade they cover. */
public final class CaseListText {
  private CaseListText() {}

  /**
   * A line for each case, then what is covered and what is not.
   *
   * @param shown the cases asked for
   * @param all every case of the library
   */
  public static String of(List<Exercise> shown, List<Exercise> all, Rulebook book) {
    PlainPage page = new PlainPage();
    for (Exercise one : shown) {
      page.hanging(0, 2, one.name() + ": " + one.title());
      page.paragraph(4, "level " + one.level() + "; " + String.join(", ", one.topics()));
    }
    page.heading(counted(shown.size(), all.size()));
    page.heading("WHAT THE CASES COVER");
    cover(page, "first choice", all, CaseListText::techniques, ids(book.techniques()));
    cover(page, "supports", all, one -> of(one, Expected::supports), ids(book.supports()));
    cover(page, "vet", all, CaseListText::urgencies, urgencies());
    cover(page, "topics", all, one -> Set.copyOf(one.topics()), topics(book));
    cover(
        page, "levels", all, one -> Set.of(Integer.toString(one.level())), List.of("1", "2", "3"));
    return page.text();
  }

  private static String counted(int shown, int all) {
    String cases = all == 1 ? " case" : " cases";
    return shown == all ? all + cases + "." : shown + " of " + all + cases + ".";
  }

  private static void cover(
      PlainPage page,
      String what,
      List<Exercise> all,
      Function<Exercise, Set<String>> of,
      List<String> wanted) {
    List<String> covered = new ArrayList<>();
    List<String> missing = new ArrayList<>();
    for (String word : wanted) {
      long count = all.stream().filter(one -> of.apply(one).contains(word)).count();
      (count == 0 ? missing : covered).add(count == 0 ? word : word + " " + count);
    }
    page.hanging(0, 4, what + ": " + String.join(", ", covered));
    if (!missing.isEmpty()) {
      page.hanging(2, 4, "none for: " + String.join(", ", missing));
    }
  }

  private static List<String> ids(List<NamedOption> options) {
    return options.stream().map(NamedOption::id).toList();
  }

  private static List<String> urgencies() {
    return Stream.concat(Stream.of(Urgency.values()).map(Urgency::word), Stream.of(Vocabulary.NONE))
        .toList();
  }

  private static List<String> topics(Rulebook book) {
    return book.topics().stream().map(Topic::id).toList();
  }

  static Set<String> techniques(Exercise one) {
    return one(one, Expected::firstChoice);
  }

  private static Set<String> urgencies(Exercise one) {
    return one(one, Expected::urgency);
  }

  private static Set<String> one(Exercise of, Function<Expected, String> word) {
    Set<String> words = new TreeSet<>();
    of.expected().values().forEach(foot -> words.add(word.apply(foot)));
    return words;
  }

  private static Set<String> of(Exercise of, Function<Expected, List<String>> list) {
    Set<String> words = new LinkedHashSet<>();
    of.expected().values().forEach(foot -> words.addAll(list.apply(foot)));
    return words;
  }
}
