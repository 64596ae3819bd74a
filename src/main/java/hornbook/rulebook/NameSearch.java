package hornbook.rulebook;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** Finds a thing by what a person calls it: its id, its name on a page, or words of either. */
public final class NameSearch {
  private static final Set<String> ARTICLES = Set.of("a", "an", "the");

  private NameSearch() {}

  /**
   * What is meant: the one with this id or this name, whatever the capitals, hyphens and articles;
   * else all in whose id or name each of the words stands, or begins a word. Empty where none does.
   */
  public static List<NamedOption> find(String text, List<NamedOption> all) {
    Optional<NamedOption> called = called(text, all);
    if (called.isPresent()) {
      return List.of(called.get());
    }
    List<String> words = words(text);
    List<NamedOption> having = new ArrayList<>();
    for (NamedOption one : all) {
      List<String> label = words(one.label());
      List<String> id = words(one.id());
      if (!words.isEmpty() && (within(words, label) || within(words, id))) {
        having.add(one);
      }
    }
    return having;
  }

  /** The one with this id or this name, whatever the capitals, hyphens and articles. */
  public static Optional<NamedOption> called(String text, List<NamedOption> all) {
    List<String> words = words(text);
    return all.stream()
        .filter(one -> words.equals(words(one.id())) || words.equals(words(one.label())))
        .findFirst();
  }

  private static boolean within(List<String> words, List<String> name) {
    return words.stream()
        .allMatch(word -> name.stream().anyMatch(part -> begins(single(word), part)));
  }

  /** A word counts for another it begins only when it is no mere letter or two. */
  private static boolean begins(String word, String part) {
    return word.equals(single(part)) || word.length() > 2 && part.startsWith(word);
  }

  private static String single(String word) {
    return word.length() > 3 && word.endsWith("s") ? word.substring(0, word.length() - 1) : word;
  }

  /** Small letters, without articles. */
  private static List<String> words(String text) {
    List<String> words = new ArrayList<>();
    for (String word : text.toLowerCase(Locale.ROOT).split("[^\\p{L}\\p{N}]+")) {
      if (!word.isEmpty() && !ARTICLES.contains(word)) {
        words.add(word);
      }
    }
    return words;
  }
}
