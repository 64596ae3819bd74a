package hornbook.report.words;

import hornbook.assessment.quantity.Units;
import hornbook.rulebook.GlossaryTerm;
import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.Rulebook;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/** Finds the rules that speak of a thing, by a word or words of the trade. For one thread. */
public final class RuleSearch {
  /** Where more rules use a word than this, those whose title has it come first. */
  public static final int MANY = 24;

  private final Rulebook book;
  private final RuleWords words;

  /** By rule, all that is said of it, once it was looked through. */
  private final Map<String, List<String>> lines = new HashMap<>();

  public RuleSearch(Rulebook book) {
    this(book, new Phrases(book, Units.MM));
  }

  public RuleSearch(Rulebook book, Phrases phrases) {
    this.book = book;
    this.words = new RuleWords(book, phrases);
  }

  /**
   * What was found, in the order of the ids.
   *
   * @param all all rules that use the word, in title, text, reason, conditions or conclusion
   * @param titled those of them whose title has it
   */
  public record Found(List<RuleEntry> all, List<RuleEntry> titled) {}

  /** The rules that use a word, or several as they stand. */
  public Found exactly(String word) {
    return using(List.of(pattern(word)));
  }

  /** The rules one line of which has all the words asked for, in whatever order. */
  public Found find(String asked) {
    return using(List.of(asked.strip().split("\\s+")).stream().map(RuleSearch::pattern).toList());
  }

  /** What the glossary says of a word; null where it does not have it. */
  public GlossaryTerm term(String asked) {
    Pattern word = pattern(asked.strip());
    return book.glossary().stream()
        .filter(
            term ->
                word.matcher(term.word()).matches()
                    || term.also().stream().anyMatch(one -> word.matcher(one).matches()))
        .findFirst()
        .orElse(null);
  }

  private Found using(List<Pattern> uses) {
    List<RuleEntry> all = new ArrayList<>();
    List<RuleEntry> titled = new ArrayList<>();
    for (RuleEntry rule : book.rules().values()) {
      if (in(rule.title(), uses)) {
        titled.add(rule);
      }
      if (lines.computeIfAbsent(rule.id(), id -> lines(rule)).stream()
          .anyMatch(line -> in(line, uses))) {
        all.add(rule);
      }
    }
    return new Found(List.copyOf(all), List.copyOf(titled));
  }

  private static boolean in(String line, List<Pattern> uses) {
    return uses.stream().allMatch(use -> use.matcher(line).find());
  }

  /** Whole words, an s, es or ed more or less, and a hyphen where the text has a space. */
  private static Pattern pattern(String word) {
    String single = word.length() > 3 ? word.replaceFirst("(?i)(?<=[^s])s$", "") : word;
    String spaced =
        String.join("[ -]", List.of(single.split("[ -]+")).stream().map(Pattern::quote).toList());
    return Pattern.compile("\\b" + spaced + "(s|es|ed)?\\b", Pattern.CASE_INSENSITIVE);
  }

  private List<String> lines(RuleEntry rule) {
    List<String> lines = new ArrayList<>(words.conditions(rule));
    lines.add(rule.title());
    lines.add(words.says(rule, rule.text().says()));
    if (rule.text().meanwhile() != null) {
      lines.add(words.says(rule, rule.text().meanwhile()));
    }
    lines.add(rule.why());
    lines.add(words.outcome(rule));
    return lines;
  }
}
