package hornbook.rulebook.load;

import hornbook.rulebook.Rulebook;
import org.kie.api.KieBase;

/**
 * A rule base ready to fire: its catalogue, and its compiled rules where there are any. Rules that
 * were not compiled are put together from the catalogue as they are needed.
 */
public final class LoadedRules {
  private final Rulebook book;
  private final KieBase compiled;

  /** Rules that are to be put together from the catalogue. */
  public LoadedRules(Rulebook book) {
    this(book, null);
  }

  public LoadedRules(Rulebook book, KieBase compiled) {
    this.book = book;
    this.compiled = compiled;
  }

  public Rulebook book() {
    return book;
  }

  /** The compiled rules; null where they are put together from the catalogue. */
  public KieBase compiled() {
    return compiled;
  }

  /** The same rules under a catalogue with other limits. */
  public LoadedRules under(Rulebook other) {
    return new LoadedRules(other, compiled);
  }
}
