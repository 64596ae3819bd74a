package hornbook.rulebook.network;

import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.fact.CitedFact;
import hornbook.rulebook.fact.Limit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.drools.core.impl.RuleBaseFactory;
import org.drools.kiesession.rulebase.InternalKnowledgeBase;
import org.drools.modelcompiler.KieBaseBuilder;
import org.kie.api.KieBaseConfiguration;
import org.kie.api.runtime.KieSession;
import org.kie.api.runtime.KieSessionsPool;

/**
 * Some rules laid out by the engine, ready to fire on any foot for which the same limits hold. Safe
 * to use from several threads.
 */
final class RuleNetwork {
  /** More firings than any foot can cause: meeting it means a rule feeds itself. */
  private static final int MOST_FIRINGS = 10_000;

  private final Set<RuleEntry> rules = Collections.newSetFromMap(new IdentityHashMap<>());
  private final AskedFacts asked;
  private final KieSessionsPool sessions;

  RuleNetwork(Collection<RuleEntry> rules, Map<String, Limit> limits) {
    this.rules.addAll(rules);
    this.asked = new AskedFacts(rules);
    // Asked of the core itself: the engine's front door looks through every library for its parts.
    KieBaseConfiguration usual = RuleBaseFactory.newKnowledgeBaseConfiguration();
    InternalKnowledgeBase base =
        KieBaseBuilder.createKieBaseFromModel(RuleModel.of(rules, limits), usual);
    this.sessions = base.newKieSessionsPool(1);
  }

  /** Whether all of these rules are laid out here. */
  boolean has(Collection<RuleEntry> all) {
    return rules.containsAll(all);
  }

  /** Everything the rules conclude from these facts, in no certain order. */
  List<Concluded> fire(Collection<? extends CitedFact> facts) {
    List<Concluded> concluded = new ArrayList<>();
    KieSession session = sessions.newKieSession();
    try {
      session.setGlobal(RuleModel.CONCLUDED, concluded);
      for (CitedFact fact : asked.among(facts)) {
        session.insert(fact);
      }
      if (session.fireAllRules(MOST_FIRINGS) == MOST_FIRINGS) {
        throw new IllegalStateException("the rules do not come to rest");
      }
    } finally {
      session.dispose();
    }
    return concluded;
  }
}
