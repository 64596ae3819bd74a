package hornbook.rulebook.network;

import hornbook.rulebook.fact.CitedFact;
import org.drools.model.functions.Predicate1;

/** Whether a fact is the one a condition asks for. */
final class IsNamed implements Predicate1<CitedFact> {
  private static final long serialVersionUID = 1L;

  private final String name;

  IsNamed(String name) {
    this.name = name;
  }

  @Override
  public boolean test(CitedFact fact) {
    return FactName.OF.apply(fact).equals(name);
  }
}
