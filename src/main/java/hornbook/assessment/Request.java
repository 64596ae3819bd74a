package hornbook.assessment;

import hornbook.assessment.word.Word;

/** What the owner asks for besides farriery. */
public enum Request implements Word {
  DRUGS,
  SEDATION,
  CUTTING_TO_BLOOD,
  DIAGNOSIS,
  FIT_TO_WORK_OPINION
}
