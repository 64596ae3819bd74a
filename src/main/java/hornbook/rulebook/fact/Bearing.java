package hornbook.rulebook.fact;

import hornbook.assessment.word.Word;

/** Which way a reason bears on a technique or a support. */
public enum Bearing {
  FOR,
  AGAINST,
  /** Something that must be put right first, by the farrier. */
  NEEDS,
  /** Something that must come first and is the vet's. */
  NEEDS_VET,
  RULES_OUT;

  /** The word of the advice format, which has one word for both needs. */
  public String word() {
    return this == NEEDS_VET ? "needs" : Word.kebab(name());
  }
}
