package hornbook.study.critique;

import hornbook.assessment.word.Word;

/** What a point of a critique is about, in the order of an answer. */
public enum About {
  VET,
  TECHNIQUE,
  REASON,
  RULED_OUT,
  SUPPORT,
  FINDING,
  CAUTION,
  QUESTION,
  NEXT_VISIT;

  public String word() {
    return Word.kebab(name());
  }
}
