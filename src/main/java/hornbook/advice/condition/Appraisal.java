package hornbook.advice.condition;

import hornbook.advice.fact.FactSheet;
import hornbook.advice.fact.Truth;
import hornbook.rulebook.Condition;
import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.WordTest;
import hornbook.rulebook.fact.CitedFact;
import hornbook.rulebook.fact.Finding;
import hornbook.rulebook.fact.RowFact;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;

/**
 * Says how every rule stands on a foot, fired or silent: which conditions hold, which fail and
 * which are unknown, and on what grounds. The engine decides what fires; this only explains, and a
 * test holds the two together.
 */
public final class Appraisal {
  private final Rulebook book;
  private final FactSheet sheet;
  private final Map<String, RuleState> states = new LinkedHashMap<>();

  /** Found out only where a condition asks for a finding. */
  private Map<String, List<RuleEntry>> makers;

  private Appraisal(Rulebook book, FactSheet sheet) {
    this.book = book;
    this.sheet = sheet;
  }

  /** The state of every rule on this foot, by id. */
  public static Map<String, RuleState> of(Rulebook book, FactSheet sheet) {
    Appraisal appraisal = new Appraisal(book, sheet);
    for (RuleEntry rule : book.rules().values()) {
      appraisal.state(rule);
    }
    return appraisal.states;
  }

  /** What looks at the conditions of a foot one by one. */
  static Appraisal condition(Rulebook book, FactSheet sheet) {
    return new Appraisal(book, sheet);
  }

  private RuleState state(RuleEntry rule) {
    RuleState known = states.get(rule.id());
    if (known != null) {
      return known;
    }
    List<ConditionState> conditions = new ArrayList<>(rule.conditions().size());
    for (Condition condition : rule.conditions()) {
      conditions.add(state(rule, condition));
    }
    RuleState state = new RuleState(rule, conditions);
    states.put(rule.id(), state);
    return state;
  }

  ConditionState state(RuleEntry rule, Condition condition) {
    if (condition instanceof Condition.OfFinding finding) {
      return finding(finding);
    }
    return state(
        condition,
        condition instanceof Condition.OfReading reading
            ? rule.limitBoundTo(reading.limit())
            : null);
  }

  /**
   * How a condition other than a finding stands.
   *
   * @param against the limit a reading is compared with, else null
   */
  ConditionState state(Condition condition, String against) {
    String limit = limit(condition, against);
    return state(condition, limit, Conditions.of(condition, limit, sheet));
  }

  /** The same where the truth is known, but of a condition that fails only that it does. */
  ConditionState stateUnlessFalse(Condition condition, String against, Truth truth) {
    return truth == Truth.FALSE
        ? new ConditionState(condition, truth, List.of(), null, List.of())
        : state(condition, limit(condition, against), truth);
  }

  private static String limit(Condition condition, String against) {
    return condition instanceof Condition.OfLimit asked ? asked.id() : against;
  }

  private ConditionState state(Condition condition, String limit, Truth truth) {
    return new ConditionState(
        condition,
        truth,
        cited(condition, truth),
        limit == null ? null : sheet.limits().get(limit),
        truth == Truth.UNKNOWN ? unseen(condition) : List.of());
  }

  /** The facts that make a condition hold, or all it asks about where none does. */
  private List<? extends CitedFact> cited(Condition condition, Truth truth) {
    if (condition instanceof Condition.OfLimit asked) {
      return present(sheet.limits().get(asked.id()));
    }
    if (condition instanceof Condition.OfReading asked) {
      return present(sheet.readings().get(asked.what()));
    }
    if (condition instanceof Condition.OfSeen asked) {
      return those(sheet.seen().get(asked.what()), truth, one -> asked.word().passes(one.word()));
    }
    if (condition instanceof Condition.OfCrack asked) {
      return those(sheet.cracks(), truth, one -> Conditions.of(asked.words(), one) == Truth.TRUE);
    }
    Map<String, WordTest> words = ((Condition.OfStretch) condition).words();
    return those(sheet.wall(), truth, one -> Conditions.of(words, one) == Truth.TRUE);
  }

  private static <T> List<T> present(T fact) {
    return fact == null ? List.of() : List.of(fact);
  }

  private static <T> List<T> those(List<T> all, Truth truth, Predicate<T> passing) {
    if (all == null) {
      return List.of();
    }
    return truth == Truth.TRUE ? all.stream().filter(passing).toList() : all;
  }

  /** The paths that would settle a condition. */
  private List<String> unseen(Condition condition) {
    if (condition instanceof Condition.OfReading asked) {
      return unseen(asked.what());
    }
    if (condition instanceof Condition.OfSeen asked) {
      return unseen(asked.what());
    }
    return condition instanceof Condition.OfCrack asked
        ? unseen("cracks", asked.words(), sheet.cracks())
        : unseen("wall", ((Condition.OfStretch) condition).words(), sheet.wall());
  }

  private List<String> unseen(
      String list, Map<String, WordTest> asked, List<? extends RowFact> rows) {
    if (rows == null) {
      return unseen(list);
    }
    return rows.stream()
        .filter(row -> Conditions.of(asked, row) == Truth.UNKNOWN)
        .flatMap(
            row ->
                asked.keySet().stream()
                    .filter(name -> row.word(name) == null)
                    .map(name -> row.field() + "." + name))
        .distinct()
        .toList();
  }

  private List<String> unseen(String what) {
    return List.copyOf(sheet.unknown().getOrDefault(what, List.of()));
  }

  private ConditionState finding(Condition.OfFinding condition) {
    if (makers == null) {
      makers = ConditionTable.makers(book.rules().values());
    }
    List<RuleState> states = new ArrayList<>();
    for (RuleEntry maker : makers.getOrDefault(condition.what(), List.of())) {
      states.add(state(maker));
    }
    return finding(condition, states);
  }

  /** A finding, as the rules stand that make it; those that fail may be left out. */
  static ConditionState finding(Condition.OfFinding condition, List<RuleState> makers) {
    Truth truth = Truth.FALSE;
    Set<String> unseen = new LinkedHashSet<>();
    for (RuleState state : makers) {
      truth = truth.or(state.truth());
      unseen.addAll(state.unseen());
    }
    return new ConditionState(
        condition,
        truth,
        truth == Truth.TRUE ? List.of(Finding.of(condition.what())) : List.of(),
        null,
        truth == Truth.UNKNOWN ? List.copyOf(unseen) : List.of());
  }
}
