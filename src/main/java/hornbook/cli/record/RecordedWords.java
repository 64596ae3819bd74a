package hornbook.cli.record;

/**
 * What the farrier says in his own words; null where he says nothing.
 *
 * @param by who writes
 * @param because why this was chosen
 * @param done what was done, and with what
 * @param outcome how it went
 */
record RecordedWords(String by, String because, String done, String outcome) {
  static final RecordedWords NONE = new RecordedWords(null, null, null, null);

  /** These, and where they are silent, those. */
  RecordedWords or(RecordedWords those) {
    return new RecordedWords(
        by == null ? those.by : by,
        because == null ? those.because : because,
        done == null ? those.done : done,
        outcome == null ? those.outcome : outcome);
  }
}
