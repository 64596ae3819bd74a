package hornbook.advice.engine;

import hornbook.advice.FiredRule;
import hornbook.advice.fact.FactSheet;
import hornbook.rulebook.fact.CitedFact;
import hornbook.rulebook.fact.Limit;
import hornbook.rulebook.load.LoadedRules;
import hornbook.rulebook.network.RuleNetworks;
import java.util.ArrayList;
import java.util.Collection;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;

/** Fires the rules over the facts of a foot. Safe to use from several threads. */
final class RuleEngine {
  private final RuleNetworks networks;

  RuleEngine(LoadedRules rules) {
    this.networks = new RuleNetworks(rules.book().rules().values());
  }

  /** Rules that are ready to fire on certain feet, or soon will be. */
  interface Ready {
    /** Every firing on one of the feet, in an order that does not hang on the engine's. */
    List<FiredRule> fire(FactSheet sheet);
  }

  /** Has the rules made ready for these feet. */
  Ready ready(List<FactSheet> sheets) {
    Map<Map<String, Limit>, RuleNetworks.Ready> ready = new IdentityHashMap<>();
    for (FactSheet sheet : sheets) {
      Map<String, Limit> limits = sheet.limits();
      if (!ready.containsKey(limits)) {
        ready.put(limits, networks.ready(() -> facts(sheets, limits), limits));
      }
    }
    return sheet -> {
      List<FiredRule> firings = new ArrayList<>();
      ready
          .get(sheet.limits())
          .fire(sheet.observed())
          .forEach(one -> firings.add(new FiredRule(one.rule(), one.conclusion())));
      return ordered(firings);
    };
  }

  private static Collection<CitedFact> facts(List<FactSheet> sheets, Map<String, Limit> limits) {
    List<CitedFact> facts = new ArrayList<>();
    for (FactSheet sheet : sheets) {
      if (sheet.limits() == limits) {
        facts.addAll(sheet.observed());
      }
    }
    return facts;
  }

  private static List<FiredRule> ordered(List<FiredRule> firings) {
    firings.sort(new FiringOrder());
    return firings;
  }
}
