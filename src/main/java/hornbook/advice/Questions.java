package hornbook.advice;

import hornbook.rulebook.Outcome;
import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.fact.Urgency;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What was not looked at and could change the advice: for every rule that only the unknown keeps
 * silent, the fields that would settle it. A possible referral outweighs everything else.
 */
final class Questions {
  private Questions() {}

  static List<Question> of(Rulebook book, FactSheet sheet) {
    Map<String, Open> open = new LinkedHashMap<>();
    for (RuleState state : Appraisal.of(book, sheet).values()) {
      if (!(state.rule().outcome() instanceof Outcome.Finds)) {
        state.unseen().forEach(field -> open.computeIfAbsent(field, Open::new).could(state.rule()));
      }
    }
    return open.values().stream()
        .sorted(Comparator.comparing((Open one) -> one.weight).thenComparing(one -> one.field))
        .map(Open::question)
        .toList();
  }

  /** A field that is open, and what is known so far of what it could change. */
  private static final class Open {
    private final String field;
    private final Set<String> changes = new LinkedHashSet<>();
    private final List<String> titles = new ArrayList<>();
    private int weight = Integer.MAX_VALUE;
    private Urgency urgency;

    Open(String field) {
      this.field = field;
    }

    void could(RuleEntry rule) {
      Outcome outcome = rule.outcome();
      int own;
      if (outcome instanceof Outcome.Refers refers) {
        own = refers.urgency().ordinal();
        urgency =
            urgency == null || refers.urgency().compareTo(urgency) < 0 ? refers.urgency() : urgency;
        changes.add("referral");
      } else if (outcome instanceof Outcome.Reasons reasons) {
        own = 10 - reasons.bearing().ordinal();
        changes.addAll(reasons.subjects());
      } else {
        own = 20;
        changes.add("caution");
      }
      if (own < weight) {
        weight = own;
        titles.add(0, rule.title());
      }
    }

    Question question() {
      return new Question(field, titles.get(0), List.copyOf(changes), urgency);
    }
  }
}
