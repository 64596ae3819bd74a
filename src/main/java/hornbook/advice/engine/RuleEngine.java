package hornbook.advice.engine;

import hornbook.advice.FiredRule;
import hornbook.rulebook.fact.CitedFact;
import hornbook.rulebook.fact.Conclusion;
import hornbook.rulebook.load.LoadedRules;
import java.util.ArrayList;
import java.util.List;
import org.kie.api.event.rule.DefaultRuleRuntimeEventListener;
import org.kie.api.event.rule.ObjectInsertedEvent;
import org.kie.api.runtime.KieSession;

/** Fires the compiled rules over the facts of one foot. Safe to use from several threads. */
final class RuleEngine {
  /** More firings than any foot can cause: meeting it means a rule feeds itself. */
  private static final int MOST_FIRINGS = 10_000;

  private final LoadedRules rules;

  RuleEngine(LoadedRules rules) {
    this.rules = rules;
  }

  /** Every firing, in an order that does not hang on the engine's. */
  List<FiredRule> fire(Iterable<? extends CitedFact> facts) {
    List<FiredRule> firings = new ArrayList<>();
    KieSession session = rules.rules().newKieSession();
    try {
      session.addEventListener(new Recorder(firings));
      for (CitedFact fact : facts) {
        session.insert(fact);
      }
      if (session.fireAllRules(MOST_FIRINGS) == MOST_FIRINGS) {
        throw new IllegalStateException("the rules do not come to rest");
      }
    } finally {
      session.dispose();
    }
    firings.sort(new FiringOrder());
    return firings;
  }

  private static final class Recorder extends DefaultRuleRuntimeEventListener {
    private final List<FiredRule> firings;

    Recorder(List<FiredRule> firings) {
      this.firings = firings;
    }

    @Override
    public void objectInserted(ObjectInsertedEvent event) {
      if (event.getRule() != null && event.getObject() instanceof Conclusion conclusion) {
        firings.add(new FiredRule((String) event.getRule().getMetaData().get("id"), conclusion));
      }
    }
  }
}
