package hornbook.rulebook.network;

import hornbook.rulebook.WordTest;
import hornbook.rulebook.fact.CitedFact;
import hornbook.rulebook.fact.RowFact;
import hornbook.rulebook.fact.Seen;
import java.util.Map;
import org.drools.model.functions.Predicate1;

/** Whether a word of a sign, a crack or a stretch of wall passes; one not looked at never does. */
final class WordsTest implements Predicate1<CitedFact> {
  private static final long serialVersionUID = 1L;

  private final String field;
  private final transient WordTest test;

  WordsTest(String field, WordTest test) {
    this.field = field;
    this.test = test;
  }

  @Override
  public boolean test(CitedFact fact) {
    String word = fact instanceof Seen seen ? seen.word() : ((RowFact) fact).word(field);
    return word != null && test.passes(word);
  }

  /** Whether a row passes all tests on its words. */
  static boolean all(Iterable<Map.Entry<String, WordTest>> tests, RowFact row) {
    for (Map.Entry<String, WordTest> one : tests) {
      String word = row.word(one.getKey());
      if (word == null || !one.getValue().passes(word)) {
        return false;
      }
    }
    return true;
  }
}
