package hornbook.rulebook.reserve;

import hornbook.assessment.Limb;
import hornbook.assessment.word.Word;

/** The feet on which something is held back, counted from the foot that calls the vet. */
public enum Extent {
  FOOT,
  PAIR,
  HORSE;

  /** The word for it in files. */
  public String word() {
    return Word.kebab(name());
  }

  /** Whether what one foot holds back is held back on another as well. */
  public boolean reaches(Limb from, Limb to) {
    return from != to && (this == HORSE || this == PAIR && from.pair() == to);
  }

  /** The wider of the two. */
  Extent or(Extent other) {
    return compareTo(other) >= 0 ? this : other;
  }
}
