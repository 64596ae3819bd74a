package hornbook.rulebook.check;

import hornbook.rulebook.FootKind;
import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.file.FaultCollector;

/** Rules that no foot can make fire. */
final class UnreachableCheck {
  private final Rulebook book;
  private final AllDemands askings;
  private final FaultCollector faults;

  UnreachableCheck(Rulebook book, AllDemands askings, FaultCollector faults) {
    this.book = book;
    this.askings = askings;
    this.faults = faults;
  }

  void check() {
    for (RuleEntry rule : book.rules().values()) {
      if (faults.named(rule.id())) {
        continue;
      }
      if (FootKind.ALL.stream().noneMatch(kind -> askings.of(rule, kind).possible())) {
        boolean limitLost = !faults.whole() && hindrance(rule).endsWith(RuleDemands.NO_LIMIT);
        if (!limitLost) {
          tell(rule);
        }
      } else {
        outOfOrder(rule);
      }
    }
    if (faults.all().isEmpty()) {
      byFindings();
    }
  }

  /** Once every rule stands on its own feet: what no other rules ever find for it. */
  private void byFindings() {
    for (RuleEntry rule : book.rules().values()) {
      if (!askings.fires(rule)) {
        tell(rule);
      }
    }
  }

  private void tell(RuleEntry rule) {
    faults.at(
        rule,
        "the rule can never fire: " + hindrance(rule),
        "take out what stands in the way, or write two rules");
  }

  private String hindrance(RuleEntry rule) {
    for (FootKind kind : FootKind.ALL) {
      String why = askings.hindrance(rule, kind);
      if (!why.endsWith(RuleDemands.NO_LIMIT)) {
        return why;
      }
    }
    return askings.hindrance(rule, FootKind.ALL.get(0));
  }

  /** Limits that hold for some feet only may be in order for those and not for others. */
  private void outOfOrder(RuleEntry rule) {
    for (FootKind kind : FootKind.ALL) {
      String why = askings.of(rule, kind).hindrance();
      if (why != null && why.endsWith(RuleDemands.BOTH_SIDES)) {
        faults.at(
            rule,
            "on " + kind + " the rule can never fire: " + why,
            "set the limits for such feet in order");
      }
    }
  }
}
