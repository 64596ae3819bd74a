package hornbook.assessment;

/** The state of the frog. */
public enum FrogState implements Word {
  HEALTHY,
  THRUSH,
  DEEP_THRUSH,
  BLEEDING_GROWTH
}
