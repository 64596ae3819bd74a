package hornbook.assessment;

/** How deep a crack goes. */
public enum CrackDepth implements Word {
  SUPERFICIAL,
  DEEP
}
