package hornbook.report.words;

/** How much a page tells. */
public enum Detail {
  /** Fifteen lines a foot: what to do, and what to look at first. */
  BRIEF,
  /** One printed page a foot. */
  USUAL,
  /** Every reason, limit, observation and source. */
  FULL
}
