package hornbook.rulebook;

import org.kie.api.KieBase;

/** A rule base ready to fire: its catalogue and its compiled rules. */
public record LoadedRules(Rulebook book, KieBase rules) {
  /** The same rules with other data, such as local limits: limits are facts, so nothing is compiled again. */
  public LoadedRules with(Rulebook changed) {
    return new LoadedRules(changed, rules);
  }
}
