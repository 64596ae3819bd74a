package hornbook.rulebook;

import org.kie.api.KieBase;

/** A rule base ready to fire: its catalogue and its compiled rules. */
public record LoadedRules(Rulebook book, KieBase rules) {}
