package hornbook.rulebook.load;

import hornbook.rulebook.Rulebook;
import java.util.function.Supplier;
import org.kie.api.KieBase;

/**
 * A rule base ready to fire: its catalogue and its compiled rules. The catalogue is there at once;
 * whoever asks for the rules may have to wait until the engine has laid them out.
 */
public final class LoadedRules {
  private final Rulebook book;
  private final Supplier<KieBase> rules;

  public LoadedRules(Rulebook book, KieBase rules) {
    this(book, () -> rules);
  }

  LoadedRules(Rulebook book, Supplier<KieBase> rules) {
    this.book = book;
    this.rules = rules;
  }

  public Rulebook book() {
    return book;
  }

  public KieBase rules() {
    return rules.get();
  }

  /** The same rules under a catalogue with other limits. */
  public LoadedRules under(Rulebook other) {
    return new LoadedRules(other, rules);
  }
}
