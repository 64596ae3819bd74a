package hornbook.rulebook.reserve;

import hornbook.assessment.word.Word;

/** What a knife, nippers or rasp may take from a foot. */
public enum Cut {
  HEELS,
  TOE,
  SOLE,
  FROG,
  DEAD_HORN,
  HOLE;

  /** The word for it in files. */
  public String word() {
    return Word.kebab(name());
  }
}
