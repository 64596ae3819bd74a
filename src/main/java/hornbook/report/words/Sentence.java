package hornbook.report.words;

import hornbook.rulebook.fact.Basis;
import java.util.List;
import java.util.regex.Pattern;

/** A sentence while it is put together: words from the facts are bent to fit their places. */
public final class Sentence {
  private static final String ONE = " 1 ";

  /** What is counted, in the plural. */
  private static final List<String> COUNTED = List.of("nails", "cycles", "turns", "visits");

  private static final List<String> ARTICLES = List.of("a ", "an ", "the ", "no ");
  private static final String ONLY = "only ";

  private static final Pattern BETWEEN = Pattern.compile("(?<=[.!?])\\s+(?=\\p{Lu})");

  private final StringBuilder text = new StringBuilder();

  /** The sentences of a text. */
  public static List<String> split(String text) {
    return List.of(BETWEEN.split(text.strip()));
  }

  public void literal(String words) {
    text.append(words);
  }

  /**
   * Adds what a fact says, with a capital where it begins a sentence.
   *
   * @param name whether the words are the name of a finding, whose article may stand there already
   */
  public void fact(String words, boolean name) {
    String fitted = name && follows(ARTICLES) ? bare(words) : words;
    if (words.startsWith("at most ") && follows(List.of(ONLY))) {
      text.setLength(text.length() - ONLY.length());
    }
    text.append(begins() ? capital(fitted) : fitted);
  }

  /** Adds the ground of the limit just named, unless it is a published work. */
  void ground(Basis basis) {
    if (basis != Basis.PUBLISHED) {
      boolean bracketed = text.lastIndexOf("(") > text.lastIndexOf(")");
      text.append(bracketed ? ", " + basis.word() : " (" + basis.word() + ")");
    }
  }

  /** Whether the words already name this ground for some limit. */
  static boolean grounded(String words, Basis basis) {
    return words.contains("(" + basis.word() + ")") || words.contains(", " + basis.word() + ")");
  }

  /** The sentence, with one of a kind in the singular. */
  public String text() {
    if (text.indexOf(ONE) < 0) {
      return text.toString();
    }
    String whole = text.toString();
    for (String what : COUNTED) {
      whole = whole.replace(ONE + what, ONE + what.substring(0, what.length() - 1));
    }
    return whole;
  }

  private boolean begins() {
    int end = text.length();
    return end == 0 || (end > 1 && text.charAt(end - 1) == ' ' && text.charAt(end - 2) == '.');
  }

  private boolean follows(List<String> words) {
    for (String word : words) {
      int start = text.length() - word.length();
      boolean there = start >= 0 && text.substring(start).equalsIgnoreCase(word);
      if (there && (start == 0 || text.charAt(start - 1) == ' ')) {
        return true;
      }
    }
    return false;
  }

  private static String bare(String name) {
    return name.startsWith("a ") || name.startsWith("an ")
        ? name.substring(name.indexOf(' ') + 1)
        : name;
  }

  public static String capital(String words) {
    return words.isEmpty() ? words : Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }
}
