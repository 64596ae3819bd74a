package hornbook.advice.condition;

import hornbook.advice.fact.FactSheet;
import hornbook.advice.fact.Truth;
import hornbook.rulebook.Condition;
import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.Rulebook;
import java.util.ArrayList;
import java.util.List;
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
  private final List<ConditionTable.Row> rows;
  private final List<ConditionTable.Line> lines;
  private final ComparedNumbers numbers;

  /** The rows of the rules asked for; the others only make findings. */
  private final int[] wanted;

  /** The rules of a book. */
  public OpenRules(Rulebook book) {
    this(book, ConditionTable.of(book), any -> true);
  }

  /** Some of the rules of a book. */
  public OpenRules(Rulebook book, Predicate<RuleEntry> wanted) {
    this(
        book,
        new ConditionTable(book, book.rules().values().stream().filter(wanted).toList()),
        wanted);
  }

  private OpenRules(Rulebook book, ConditionTable table, Predicate<RuleEntry> wanted) {
    this.book = book;
    this.rows = table.rows();
    this.lines = table.lines();
    this.numbers = new ComparedNumbers(lines);
    this.wanted =
        IntStream.range(0, rows.size()).filter(at -> wanted.test(rows.get(at).rule())).toArray();
  }

  /** The state of every rule that holds or is open on this foot, in the order Appraisal has. */
  public List<RuleState> on(FactSheet sheet) {
    Survey survey = new Survey(Appraisal.condition(book, sheet), numbers.on(sheet));
    List<RuleState> open = new ArrayList<>();
    for (int at : wanted) {
      RuleState state = survey.rule(at);
      if (state != null) {
        open.add(state);
      }
    }
    return open;
  }

  /** One foot while it is being looked at. */
  private final class Survey {
    private static final RuleState FAILS = null;

    private final Appraisal appraisal;
    private final ComparedNumbers.OnFoot compared;
    private final ConditionState[] states = new ConditionState[lines.size()];
    private final RuleState[] rules = new RuleState[rows.size()];
    private final boolean[] looked = new boolean[rows.size()];

    Survey(Appraisal appraisal, ComparedNumbers.OnFoot compared) {
      this.appraisal = appraisal;
      this.compared = compared;
    }

    /** The state of the rule in this row, with what is unknown of it; null where it fails. */
    RuleState rule(int at) {
      if (!looked[at]) {
        rules[at] = look(rows.get(at));
        looked[at] = true;
      }
      return rules[at];
    }

    private RuleState look(ConditionTable.Row row) {
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

    private ConditionState condition(ConditionTable.Row row, int place) {
      int line = row.lines()[place];
      if (states[line] == null) {
        Condition condition = row.rule().conditions().get(place);
        int[] makers = lines.get(line).makers();
        states[line] =
            makers == null
                ? appraisal.stateUnlessFalse(
                    condition, lines.get(line).limit(), compared.of(condition, line))
                : Appraisal.finding((Condition.OfFinding) condition, makers(makers));
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
