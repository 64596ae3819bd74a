package hornbook.advice.condition;

import hornbook.advice.fact.FactSheet;
import hornbook.advice.fact.Truth;
import hornbook.rulebook.Condition;
import hornbook.rulebook.RuleConclusion;
import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.WordTest;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/**
 * The rules that hold on a foot or that only the unknown keeps silent. Says of them what {@link
 * Appraisal} says, in far less time: a condition that several rules share is looked at once, a rule
 * is left at its first condition that fails, and of the others only what is unknown is told. Safe
 * to use from several threads.
 */
public final class OpenRules {
  private final Rulebook book;
  private final List<Row> rows = new ArrayList<>();

  /** The conditions that differ, each as the first rule has it that asks it: the lines. */
  private final List<Condition> first = new ArrayList<>();

  /** For every line that is a finding, the rows of the rules that make it; else null. */
  private final List<int[]> makers = new ArrayList<>();

  /**
   * @param wanted whether the rule is asked after, not only needed for what others build on
   */
  private record Row(RuleEntry rule, int[] lines, boolean wanted) {}

  /** The rules of a book. */
  public OpenRules(Rulebook book) {
    this(book, any -> true);
  }

  /** Some of the rules of a book. */
  public OpenRules(Rulebook book, Predicate<RuleEntry> wanted) {
    this.book = book;
    Map<String, Integer> numbers = new HashMap<>();
    for (RuleEntry rule : makersFirst()) {
      List<Condition> conditions = rule.conditions();
      int[] own = new int[conditions.size()];
      for (int place = 0; place < own.length; place++) {
        Condition condition = conditions.get(place);
        Integer known = numbers.putIfAbsent(key(rule, condition), numbers.size());
        own[place] = known == null ? numbers.size() - 1 : known;
        if (known == null) {
          first.add(condition);
        }
      }
      rows.add(new Row(rule, own, wanted.test(rule)));
    }
    first.forEach(condition -> makers.add(makersOf(condition)));
  }

  /** Every rule behind those that make what it builds on: the order Appraisal tells them in. */
  private List<RuleEntry> makersFirst() {
    Map<String, List<RuleEntry>> finders = new HashMap<>();
    for (RuleEntry rule : book.rules().values()) {
      if (rule.outcome() instanceof RuleConclusion.Finds finds) {
        finders.computeIfAbsent(finds.finding(), any -> new ArrayList<>()).add(rule);
      }
    }
    Set<RuleEntry> known = Collections.newSetFromMap(new IdentityHashMap<>());
    List<RuleEntry> all = new ArrayList<>();
    book.rules().values().forEach(rule -> add(rule, finders, known, all));
    return all;
  }

  private static void add(
      RuleEntry rule,
      Map<String, List<RuleEntry>> finders,
      Set<RuleEntry> known,
      List<RuleEntry> to) {
    if (known.contains(rule)) {
      return;
    }
    for (Condition condition : rule.conditions()) {
      if (condition instanceof Condition.OfFinding finding) {
        finders
            .getOrDefault(finding.what(), List.of())
            .forEach(one -> add(one, finders, known, to));
      }
    }
    known.add(rule);
    to.add(rule);
  }

  /** The same for two conditions that ask the same, whatever name their variables have. */
  private static String key(RuleEntry rule, Condition condition) {
    if (condition instanceof Condition.OfReading reading) {
      String side = reading.satisfies() ? " satisfies " : " misses ";
      return reading.what() + side + rule.limitBoundTo(reading.limit());
    }
    if (condition instanceof Condition.OfSeen seen) {
      return seen.what() + " seen " + key(seen.word());
    }
    if (condition instanceof Condition.OfCrack crack) {
      return "crack " + key(crack.words());
    }
    if (condition instanceof Condition.OfStretch stretch) {
      return "stretch " + key(stretch.words());
    }
    return condition instanceof Condition.OfFinding finding
        ? "finding " + finding.what()
        : "limit " + ((Condition.OfLimit) condition).id();
  }

  private static String key(Map<String, WordTest> tests) {
    StringBuilder key = new StringBuilder();
    tests.forEach((field, test) -> key.append(field).append(' ').append(key(test)).append(' '));
    return key.toString();
  }

  private static String key(WordTest test) {
    return (test.oneOf() ? "in " : "not in ") + String.join(",", test.words());
  }

  private int[] makersOf(Condition condition) {
    return condition instanceof Condition.OfFinding finding
        ? IntStream.range(0, rows.size())
            .filter(
                at ->
                    rows.get(at).rule().outcome() instanceof RuleConclusion.Finds finds
                        && finds.finding().equals(finding.what()))
            .toArray()
        : null;
  }

  /** The state of every rule that holds or is open on this foot, in the order Appraisal has. */
  public List<RuleState> on(FactSheet sheet) {
    Survey survey = new Survey(Appraisal.condition(book, sheet));
    List<RuleState> open = new ArrayList<>();
    for (int at = 0; at < rows.size(); at++) {
      if (rows.get(at).wanted()) {
        RuleState state = survey.rule(at);
        if (state != null) {
          open.add(state);
        }
      }
    }
    return open;
  }

  /** One foot while it is being looked at. */
  private final class Survey {
    private static final RuleState FAILS = null;

    private final Appraisal appraisal;
    private final ConditionState[] states = new ConditionState[first.size()];
    private final RuleState[] rules = new RuleState[rows.size()];
    private final boolean[] looked = new boolean[rows.size()];

    Survey(Appraisal appraisal) {
      this.appraisal = appraisal;
    }

    /** The state of the rule in this row, with what is unknown of it; null where it fails. */
    RuleState rule(int at) {
      if (!looked[at]) {
        rules[at] = look(rows.get(at));
        looked[at] = true;
      }
      return rules[at];
    }

    private RuleState look(Row row) {
      List<ConditionState> unknown = List.of();
      for (int place = 0; place < row.lines().length; place++) {
        ConditionState state = condition(row, place);
        if (state.truth() == Truth.FALSE) {
          return FAILS;
        }
        if (state.truth() == Truth.UNKNOWN) {
          unknown = unknown.isEmpty() ? new ArrayList<>(4) : unknown;
          unknown.add(state);
        }
      }
      return new RuleState(row.rule(), unknown);
    }

    private ConditionState condition(Row row, int place) {
      int line = row.lines()[place];
      if (states[line] == null) {
        Condition condition = row.rule().conditions().get(place);
        states[line] =
            makers.get(line) == null
                ? appraisal.state(row.rule(), condition)
                : Appraisal.finding((Condition.OfFinding) condition, makers(makers.get(line)));
      }
      return states[line];
    }

    private List<RuleState> makers(int[] makers) {
      List<RuleState> open = new ArrayList<>(makers.length);
      for (int maker : makers) {
        if (rule(maker) != null) {
          open.add(rule(maker));
        }
      }
      return open;
    }
  }
}
