package hornbook.rulebook.check;

import hornbook.rulebook.FootKind;
import hornbook.rulebook.RuleConclusion;
import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.Rulebook;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What all rules ask of every kind of foot, and which of it can ever be given. */
final class AllDemands {
  private final Map<String, Map<FootKind, RuleDemands>> asked = new LinkedHashMap<>();
  private final Map<String, List<RuleEntry>> makers = new HashMap<>();
  private final Map<String, Map<FootKind, Boolean>> firing = new HashMap<>();

  AllDemands(Rulebook book) {
    for (RuleEntry rule : book.rules().values()) {
      Map<FootKind, RuleDemands> byKind = new LinkedHashMap<>();
      FootKind.ALL.forEach(kind -> byKind.put(kind, RuleDemands.of(rule, kind, book)));
      asked.put(rule.id(), byKind);
      if (rule.outcome() instanceof RuleConclusion.Finds finds) {
        makers.computeIfAbsent(finds.finding(), key -> new ArrayList<>()).add(rule);
      }
    }
  }

  RuleDemands of(RuleEntry rule, FootKind kind) {
    return asked.get(rule.id()).get(kind);
  }

  /** Why the rule cannot fire on such a foot; null where it can. */
  String hindrance(RuleEntry rule, FootKind kind) {
    return hindrance(of(rule, kind), kind, new ArrayList<>());
  }

  boolean fires(RuleEntry rule, FootKind kind) {
    return firing
        .computeIfAbsent(rule.id(), id -> new HashMap<>())
        .computeIfAbsent(kind, one -> hindrance(rule, one) == null);
  }

  /** Whether the rule can fire on any foot at all. */
  boolean fires(RuleEntry rule) {
    return FootKind.ALL.stream().anyMatch(kind -> fires(rule, kind));
  }

  private String hindrance(RuleDemands own, FootKind kind, List<String> above) {
    if (!own.possible()) {
      return own.hindrance();
    }
    for (String finding : own.findings()) {
      if (above.contains(finding)) {
        continue;
      }
      List<String> path = new ArrayList<>(above);
      path.add(finding);
      List<RuleEntry> by = makers.getOrDefault(finding, List.of());
      boolean made =
          by.stream()
              .anyMatch(
                  maker ->
                      own.and(of(maker, kind)).possible()
                          && hindrance(of(maker, kind), kind, path) == null);
      if (!made) {
        return by.isEmpty()
            ? "no rule finds " + finding
            : "no rule that finds " + finding + " fires on a foot that gives it the rest";
      }
    }
    return null;
  }

  /** Whether one rule fires wherever the other does, as far as what they ask shows. */
  boolean alwaysWith(RuleEntry rule, RuleEntry other) {
    boolean anywhere = false;
    for (FootKind kind : FootKind.ALL) {
      if (fires(rule, kind)) {
        anywhere = true;
        if (!of(other, kind).possible() || !of(rule, kind).covers(of(other, kind))) {
          return false;
        }
      }
    }
    return anywhere;
  }
}
