package hornbook.assessment.word;

/** The state of the frog. */
public enum FrogState implements Word {
  HEALTHY,
  /** Shrunken for want of work; where it has thrush as well, the thrush is written. */
  WASTED,
  THRUSH,
  DEEP_THRUSH,
  BLEEDING_GROWTH
}
