package hornbook.assessment.word;

/** How deep a crack goes. */
public enum CrackDepth implements Word {
  SUPERFICIAL,
  DEEP
}
