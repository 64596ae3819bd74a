package hornbook.rulebook;

/** Rules that no foot can make fire. */
final class NeverCheck {
  private final Rulebook book;
  private final Askings askings;
  private final Faults faults;

  NeverCheck(Rulebook book, Askings askings, Faults faults) {
    this.book = book;
    this.askings = askings;
    this.faults = faults;
  }

  void check() {
    for (RuleEntry rule : book.rules().values()) {
      if (!askings.fires(rule)) {
        faults.at(
            rule,
            "the rule can never fire: " + hindrance(rule),
            "take out one of the two conditions, or write two rules");
      } else {
        outOfOrder(rule);
      }
    }
  }

  private String hindrance(RuleEntry rule) {
    for (FootKind kind : FootKind.ALL) {
      String why = askings.hindrance(rule, kind);
      if (!why.endsWith(Asked.NO_LIMIT)) {
        return why;
      }
    }
    return askings.hindrance(rule, FootKind.ALL.get(0));
  }

  /** Limits that hold for some feet only may be in order for those and not for others. */
  private void outOfOrder(RuleEntry rule) {
    for (FootKind kind : FootKind.ALL) {
      String why = askings.of(rule, kind).hindrance();
      if (why != null && why.endsWith(Asked.BOTH_SIDES)) {
        faults.at(
            rule,
            "on " + kind + " the rule can never fire: " + why,
            "set the limits for such feet in order");
      }
    }
  }
}
