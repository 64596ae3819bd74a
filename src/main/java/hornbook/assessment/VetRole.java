package hornbook.assessment;

import hornbook.assessment.word.Word;

/** The part a vet has taken so far. */
public enum VetRole implements Word {
  NONE,
  INFORMED,
  DIRECTING
}
