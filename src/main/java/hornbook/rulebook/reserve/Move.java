package hornbook.rulebook.reserve;

import hornbook.assessment.word.Word;

/** What a horse may be asked to do so that somebody sees it go. */
public enum Move {
  TROT,
  CIRCLES,
  BACKING;

  /** The word for it in files. */
  public String word() {
    return Word.kebab(name());
  }
}
