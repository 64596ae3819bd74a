package hornbook.rulebook;

import java.util.List;

/**
 * A word of the trade, and what it means.
 *
 * @param also other words for it that people look it up by, older ones among them
 */
public record GlossaryTerm(String word, String says, List<String> also) {
  public GlossaryTerm {
    also = List.copyOf(also);
  }
}
