package hornbook.assessment.word;

/** Whether living tissue lies open to view. */
public enum LivingTissue implements Word {
  HIDDEN,
  EXPOSED
}
