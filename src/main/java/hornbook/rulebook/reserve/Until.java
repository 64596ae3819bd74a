package hornbook.rulebook.reserve;

import hornbook.assessment.word.Word;

/** Who or what gives back what is held back; what is waited for longest stands last. */
public enum Until {
  DAYS,
  VET_HAS_SEEN,
  VET_DIRECTS;

  /** The word for it in files. */
  public String word() {
    return Word.kebab(name());
  }

  /** The one that is waited for longer. */
  Until or(Until other) {
    return compareTo(other) >= 0 ? this : other;
  }
}
