package hornbook.assessment;

import hornbook.assessment.word.Word;

/** How the horse stands to be shod. */
public enum Handling implements Word {
  QUIET,
  RESTLESS,
  DANGEROUS
}
