package hornbook.rulebook.fact;

import hornbook.assessment.word.Word;

/** How good the ground under a value is, best first. */
public enum Basis {
  PUBLISHED,
  QUOTED,
  DERIVED,
  PRACTICE,
  MEMORY;

  public String word() {
    return Word.kebab(name());
  }

  /** The weaker of two: a conclusion stands no better than its weakest ground. */
  public Basis weaker(Basis other) {
    return compareTo(other) >= 0 ? this : other;
  }
}
