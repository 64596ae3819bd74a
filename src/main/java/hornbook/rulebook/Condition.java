package hornbook.rulebook;

import java.util.Map;

/**
 * One line of a rule's conditions; {@code variable} is the name it is bound to, without the dollar
 * sign.
 */
public sealed interface Condition {
  String variable();

  /** Brings a limit in. */
  record OfLimit(String variable, String id) implements Condition {}

  /** A number that certainly satisfies, or certainly misses, the limit bound to {@code limit}. */
  record OfReading(String variable, String what, boolean satisfies, String limit)
      implements Condition {}

  /** A word that was observed. */
  record OfSeen(String variable, String what, WordTest word) implements Condition {}

  /** Some crack that passes all these tests. */
  record OfCrack(String variable, Map<String, WordTest> words) implements Condition {}

  /** Some stretch of wall that passes all these tests. */
  record OfStretch(String variable, Map<String, WordTest> words) implements Condition {}

  /** Something another rule has found. */
  record OfFinding(String variable, String what) implements Condition {}
}
