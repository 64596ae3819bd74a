package hornbook.assessment.word;

/** What a vet has found in the foot. */
public enum Diagnosis implements Word {
  NONE,
  LAMINITIS,
  ABSCESS,
  FRACTURE,
  HEEL_PAIN,
  WHITE_LINE_DISEASE,
  KERATOMA,
  OTHER
}
