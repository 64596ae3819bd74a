package hornbook.record.store;

import hornbook.assessment.word.Word;

/**
 * Something wrong in a book.
 *
 * @param entry its number; 0 where it concerns the book as a whole
 * @param says in a sentence, with the name of the file
 */
public record BookFault(int entry, Kind kind, String says) {
  /** What may be wrong. */
  public enum Kind {
    ALTERED,
    MISSING,
    OUT_OF_ORDER,
    COPY,
    LINK;

    public String word() {
      return Word.kebab(name());
    }
  }
}
