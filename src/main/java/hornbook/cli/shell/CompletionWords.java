package hornbook.cli.shell;

import hornbook.rulebook.GlossaryTerm;
import hornbook.rulebook.NamedOption;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.Topic;
import hornbook.study.explain.Subject;
import hornbook.study.explain.SubjectNames;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** What may stand for an argument, known by the label it has in the help. */
public final class CompletionWords {
  static final String FILE = "file";
  static final String FOLDER = "folder";

  /** Files, and the names of cases as well. */
  static final String CASE = "case_or_file";

  private final Map<String, List<String>> words = new LinkedHashMap<>();

  /**
   * The words of a rule base.
   *
   * @param cases the names of the cases that come with the program
   */
  public CompletionWords(Rulebook book, List<String> cases) {
    List<String> techniques = book.techniques().stream().map(NamedOption::id).toList();
    List<String> supports = book.supports().stream().map(NamedOption::id).toList();
    List<String> topics = book.topics().stream().map(Topic::id).toList();
    words.put("technique", techniques);
    words.put("support", supports);
    words.put("either", both(techniques, supports));
    words.put("topic", topics);
    Set<String> subjects = new LinkedHashSet<>();
    new SubjectNames(book).all().stream().map(Subject::id).forEach(subjects::add);
    words.put("subject", List.copyOf(subjects));
    Set<String> entries = new TreeSet<>(book.rules().keySet());
    book.limits().forEach(limit -> entries.add(limit.id()));
    entries.addAll(book.findings().keySet());
    entries.addAll(both(techniques, supports));
    entries.addAll(book.sources().keySet());
    words.put("entry", List.copyOf(entries));
    words.put(
        "word",
        book.glossary().stream()
            .map(GlossaryTerm::word)
            .filter(word -> word.indexOf(' ') < 0)
            .toList());
    words.put("listed", both(topics, words.get("word")));
    words.put(CASE, cases);
  }

  private static List<String> both(List<String> some, List<String> more) {
    List<String> both = new ArrayList<>(some);
    both.addAll(more);
    return both;
  }

  /** Every kind of argument that has words, by its name. */
  Map<String, List<String>> all() {
    return words;
  }

  /**
   * The kind of an argument; empty where nobody can know what stands there.
   *
   * @param command its path without the program: "rules show"
   */
  static String kind(String command, String label) {
    return switch (label) {
      case "FILE", "ANSWER" -> FILE;
      case "DIR", "OLD", "NEW" -> FOLDER;
      case "TECHNIQUE" -> "technique";
      case "SUPPORT" -> "support";
      case "TOPIC" -> "topic";
      case "CASE" -> CASE;
      case "SUBJECT" -> command.equals("contrast") ? "either" : "subject";
      case "ID" -> command.equals("rules show") ? "entry" : "";
      case "WORD" -> command.equals("rules list") ? "listed" : "word";
      default -> "";
    };
  }
}
