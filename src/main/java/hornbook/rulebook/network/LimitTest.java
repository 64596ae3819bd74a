package hornbook.rulebook.network;

import hornbook.rulebook.fact.CitedFact;
import hornbook.rulebook.fact.Limit;
import hornbook.rulebook.fact.Reading;
import org.drools.model.functions.Predicate1;

/** Whether a reading certainly satisfies, or certainly misses, a limit. */
final class LimitTest implements Predicate1<CitedFact> {
  private static final long serialVersionUID = 1L;

  private final transient Limit limit;
  private final boolean satisfies;

  LimitTest(Limit limit, boolean satisfies) {
    this.limit = limit;
    this.satisfies = satisfies;
  }

  @Override
  public boolean test(CitedFact fact) {
    Reading reading = (Reading) fact;
    return satisfies ? reading.satisfies(limit) : reading.misses(limit);
  }
}
