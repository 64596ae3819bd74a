package hornbook.report;

import hornbook.rulebook.fact.Basis;
import java.util.regex.Pattern;

/** A sentence while it is put together: words from the facts are bent to fit their places. */
final class Sentence {
  private static final Pattern ONE = Pattern.compile("(?<![\\d./] ?)1 (nail|cycle|turn|visit)s\\b");
  private static final Pattern ARTICLE_BEFORE = Pattern.compile("(?is).*\\b(a|an|the|no) $");
  private static final Pattern ARTICLE = Pattern.compile("^(a|an) ");
  private static final Pattern ONLY_BEFORE = Pattern.compile("(?is).*\\bonly $");

  private final StringBuilder text = new StringBuilder();

  void literal(String words) {
    text.append(words);
  }

  /** Adds what a fact says, with a capital where it begins the sentence. */
  void fact(String words, boolean name) {
    String fitted = words;
    if (name && ARTICLE_BEFORE.matcher(text).matches()) {
      fitted = ARTICLE.matcher(words).replaceFirst("");
    }
    if (words.startsWith("at most ") && ONLY_BEFORE.matcher(text).matches()) {
      text.setLength(text.length() - "only ".length());
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

  String text() {
    return ONE.matcher(text).replaceAll("1 $1");
  }

  private boolean begins() {
    return text.isEmpty() || text.toString().endsWith(". ");
  }

  static String capital(String words) {
    return words.isEmpty() ? words : Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }
}
