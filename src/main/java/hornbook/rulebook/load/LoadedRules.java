package hornbook.rulebook.load;

import hornbook.rulebook.Rulebook;

/** A rule base that was read, found in order, and may fire. */
public record LoadedRules(Rulebook book) {
  /** The same rules under a catalogue with other limits. */
  public LoadedRules under(Rulebook other) {
    return new LoadedRules(other);
  }
}
