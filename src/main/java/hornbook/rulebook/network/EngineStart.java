package hornbook.rulebook.network;

import hornbook.rulebook.Condition;
import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.fact.CitedFact;
import hornbook.rulebook.fact.Limit;
import hornbook.rulebook.fact.Seen;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Has the engine load its classes and set itself up by a few rules of a catalogue, one of every
 * kind, and forgets them. It needs no foot, so that a cold start can do it while the file is read.
 */
public final class EngineStart {
  private EngineStart() {}

  public static void with(Rulebook book) {
    Map<String, Limit> limits = new HashMap<>();
    book.limits().forEach(limit -> limits.put(limit.id(), limit));
    Set<Class<?>> kinds = new HashSet<>();
    List<RuleEntry> few = new ArrayList<>();
    List<CitedFact> facts = new ArrayList<>();
    for (RuleEntry rule : book.rules().values()) {
      boolean another = kinds.add(rule.outcome().getClass());
      for (Condition condition : rule.conditions()) {
        another |= kinds.add(condition.getClass());
      }
      if (another) {
        few.add(rule);
        rule.conditions().forEach(condition -> add(condition, facts));
      }
    }
    new RuleNetwork(few, limits).fire(facts);
  }

  /** The word a condition asks for. */
  private static void add(Condition condition, List<CitedFact> facts) {
    if (condition instanceof Condition.OfSeen seen && seen.word().oneOf()) {
      facts.add(new Seen(seen.what(), seen.word().words().get(0), ""));
    }
  }
}
