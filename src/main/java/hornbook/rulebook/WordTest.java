package hornbook.rulebook;

import java.util.List;

/** A test on a word: one of these, or none of these. */
public record WordTest(boolean oneOf, List<String> words) {
  public WordTest {
    words = List.copyOf(words);
  }

  public boolean passes(String word) {
    return words.contains(word) == oneOf;
  }

  /** The words that would pass, in plain text. */
  public String asked() {
    return (oneOf ? "" : "anything but ") + String.join(" or ", words);
  }
}
