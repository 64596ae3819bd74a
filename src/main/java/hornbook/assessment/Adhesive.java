package hornbook.assessment;

import hornbook.assessment.word.Word;

/** The chemistry of the adhesive in the van. */
public enum Adhesive implements Word {
  ACRYLIC,
  URETHANE
}
