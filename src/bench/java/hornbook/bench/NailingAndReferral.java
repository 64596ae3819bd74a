package hornbook.bench;

import hornbook.advice.fact.FactSheet;
import hornbook.bench.twin.HandRules;
import hornbook.rulebook.Condition;
import hornbook.rulebook.RuleConclusion;
import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.fact.CitedFact;
import hornbook.rulebook.fact.Conclusion;
import hornbook.rulebook.fact.Finding;
import hornbook.rulebook.fact.Limit;
import hornbook.rulebook.fact.Reason;
import hornbook.rulebook.fact.Referral;
import hornbook.rulebook.network.Concluded;
import hornbook.rulebook.network.RuleNetworks;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The engine with the rules on nailing and on calling the vet, and those they build on, alone. */
final class NailingAndReferral {
  private static final Set<String> TOPICS = Set.of("nailing", "referral");

  private final RuleNetworks networks;

  NailingAndReferral(Rulebook book) {
    Set<String> ids = new LinkedHashSet<>();
    for (RuleEntry rule : book.rules().values()) {
      if (TOPICS.contains(rule.topic())) {
        add(rule, book, ids);
      }
    }
    networks = new RuleNetworks(ids.stream().map(book.rules()::get).toList());
  }

  private static void add(RuleEntry rule, Rulebook book, Set<String> ids) {
    if (ids.add(rule.id())) {
      for (Condition condition : rule.conditions()) {
        if (condition instanceof Condition.OfFinding asked) {
          for (RuleEntry maker : book.rules().values()) {
            if (maker.outcome() instanceof RuleConclusion.Finds finds
                && finds.finding().equals(asked.what())) {
              add(maker, book, ids);
            }
          }
        }
      }
    }
  }

  List<Concluded> fired(FactSheet sheet) {
    Map<String, Limit> limits = sheet.limits();
    Collection<CitedFact> facts = sheet.observed();
    return networks.ready(() -> facts, limits).fire(facts);
  }

  /** The same in the form plain Java has it, each once. */
  Set<HandRules.Conclusion> concluded(FactSheet sheet) {
    Set<HandRules.Conclusion> all = new LinkedHashSet<>();
    for (Concluded one : fired(sheet)) {
      all.addAll(of(one.rule(), one.conclusion()));
    }
    return all;
  }

  private static List<HandRules.Conclusion> of(String rule, Conclusion conclusion) {
    if (conclusion instanceof Finding finding) {
      return List.of(new HandRules.Conclusion(rule, "finding", finding.what()));
    }
    if (conclusion instanceof Referral referral) {
      return List.of(new HandRules.Conclusion(rule, referral.urgency().word(), referral.id()));
    }
    if (conclusion instanceof Reason reason) {
      List<HandRules.Conclusion> all = new ArrayList<>();
      for (String subject : reason.subjects()) {
        all.add(new HandRules.Conclusion(rule, reason.bearing().name(), subject));
      }
      return all;
    }
    String caution = ((hornbook.rulebook.fact.Caution) conclusion).id();
    return List.of(new HandRules.Conclusion(rule, "caution", caution));
  }
}
