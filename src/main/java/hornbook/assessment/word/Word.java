package hornbook.assessment.word;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/** A word of the assessment format; every enum of the format is one. */
public interface Word {
  String name();

  /** The word as it stands in a file: kebab-case. */
  default String word() {
    return kebab(name());
  }

  /** Other spellings people use for it; they are read, and written as {@link #word}. */
  default List<String> also() {
    return List.of();
  }

  /** Whether a text is this word, or another spelling of it. */
  default boolean spelt(String text) {
    return word().equals(text) || also().contains(text);
  }

  /** The name of a constant as a word: {@code FIRST_CHOICE} is {@code first-choice}. */
  static String kebab(String constant) {
    return Kebab.KNOWN.computeIfAbsent(
        constant, name -> name.toLowerCase(Locale.ROOT).replace('_', '-'));
  }

  /** There are so many constants and no more, and words are asked for all the time. */
  final class Kebab {
    private static final Map<String, String> KNOWN = new ConcurrentHashMap<>();

    private Kebab() {}
  }
}
