package hornbook.rulebook.network;

import hornbook.rulebook.fact.CitedFact;
import hornbook.rulebook.fact.Finding;
import hornbook.rulebook.fact.Reading;
import hornbook.rulebook.fact.Seen;
import org.drools.model.functions.Function1;

/** What a fact is about: the name by which a condition asks for it. */
final class FactName implements Function1<CitedFact, String> {
  static final FactName OF = new FactName();

  private static final long serialVersionUID = 1L;

  private FactName() {}

  @Override
  public String apply(CitedFact fact) {
    if (fact instanceof Seen seen) {
      return seen.what();
    }
    if (fact instanceof Reading reading) {
      return reading.what();
    }
    return fact instanceof Finding finding ? finding.what() : "";
  }
}
