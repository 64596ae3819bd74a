package hornbook.rulebook;

import hornbook.rulebook.fact.Basis;
import hornbook.rulebook.fact.Limit;
import hornbook.rulebook.fact.Urgency;
import java.util.List;
import java.util.stream.Stream;

/** A rule as the catalogue knows it: everything but the machinery that fires it. */
public record RuleEntry(
    String id,
    String title,
    String topic,
    Basis basis,
    String since,
    String why,
    String silent,
    List<Condition> conditions,
    RuleConclusion outcome,
    RuleText text,
    String file,
    int line) {

  /** The ids of the limits the rule brings in, in its order. */
  public Stream<String> limits() {
    return conditions.stream()
        .filter(Condition.OfLimit.class::isInstance)
        .map(condition -> ((Condition.OfLimit) condition).id());
  }

  /** Whether it calls the vet so soon, or sooner. */
  public boolean calls(Urgency latest) {
    return outcome instanceof RuleConclusion.Refers refers
        && refers.urgency().compareTo(latest) <= 0;
  }

  /** The weakest ground among the rule's own and that of limits it binds. */
  public Basis weakest(Stream<Limit> bound) {
    return bound.map(Limit::basis).reduce(basis, Basis::weaker);
  }

  /** The id of the limit bound to a variable. */
  public String limitBoundTo(String variable) {
    for (Condition condition : conditions) {
      if (condition instanceof Condition.OfLimit limit && limit.variable().equals(variable)) {
        return limit.id();
      }
    }
    throw new IllegalArgumentException(id + " binds no limit to " + variable);
  }
}
