package hornbook.advice.outcome;

import hornbook.advice.Verdict;
import hornbook.advice.condition.ConditionTable;
import hornbook.advice.condition.RuleState;
import hornbook.advice.fact.FactSheet;
import hornbook.advice.fact.Held;
import hornbook.advice.question.PossibleOutcomes;
import hornbook.assessment.VetRole;
import hornbook.rulebook.Condition;
import hornbook.rulebook.RuleConclusion;
import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.fact.Bearing;
import hornbook.rulebook.fact.Urgency;
import hornbook.rulebook.reserve.Extent;
import hornbook.rulebook.reserve.Reserves;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The rules as a table of conditions: which of them a foot meets, and what a foot that meets them
 * is advised, without the engine. For whoever tries thousands of feet; a test holds the table to
 * the engine, and what is told of a foot is the engine's all the same. Safe to use from several
 * threads.
 */
public final class RuleTable {
  private static volatile RuleTable last;

  private final Rulebook book;
  private final List<ConditionTable.Line> lines;
  private final List<Row> rows = new ArrayList<>();
  private final Map<String, Integer> held = new LinkedHashMap<>();
  private final Map<String, BitSet> barring = new ConcurrentHashMap<>();

  /**
   * A rule: the conditions it asks, and the finding it makes, by their numbers.
   *
   * @param elsewhere whether it is a call on another foot, for what it holds back on this one
   */
  private record Row(RuleEntry rule, int[] lines, int finds, boolean elsewhere) {}

  public RuleTable(Rulebook book) {
    this(book, ConditionTable.of(book));
    elsewhere();
  }

  /** The table of these rules; the last one asked for is kept. */
  static RuleTable of(Rulebook book) {
    RuleTable known = last;
    if (known == null || known.book != book) {
      known = new RuleTable(book);
      last = known;
    }
    return known;
  }

  /** A table of the calls for the vet that reach beyond their own foot, and what they build on. */
  public static RuleTable farReaching(Rulebook book) {
    List<RuleEntry> reaching =
        book.rules().values().stream().filter(RuleTable::reachesOthers).toList();
    return new RuleTable(book, new ConditionTable(book, reaching));
  }

  /** Whether the rule calls the vet and holds something back on another foot than its own. */
  static boolean reachesOthers(RuleEntry rule) {
    Reserves reserves = rule.text().reserves();
    return !reserves.nothing() && reserves.extent() != Extent.FOOT;
  }

  private RuleTable(Rulebook book, ConditionTable table) {
    this.book = book;
    this.lines = table.lines();
    for (ConditionTable.Row row : table.rows()) {
      rows.add(new Row(row.rule(), row.lines(), row.finds(), false));
    }
  }

  /** A row for every call that holds something back here when another foot makes it. */
  private void elsewhere() {
    for (Row row : List.copyOf(rows)) {
      if (reachesOthers(row.rule())) {
        int line = lines.size() + held.size();
        held.put(row.rule().id(), line);
        rows.add(new Row(row.rule(), new int[] {line}, ConditionTable.NONE, true));
      }
    }
  }

  /** The numbers of the conditions that certainly hold on a foot. */
  public BitSet met(FactSheet sheet) {
    BitSet holding = new BitSet(lines.size());
    for (int number = 0; number < lines.size(); number++) {
      holding.set(number, lines.get(number).holds(sheet));
    }
    for (Held other : sheet.held()) {
      Integer line = held.get(other.rule().id());
      if (line != null) {
        holding.set(line);
      }
    }
    return holding;
  }

  /** The conditions that hold with this exact reading on the other side of this limit alone. */
  BitSet across(BitSet met, String reading, String limit) {
    BitSet across = (BitSet) met.clone();
    for (int number = 0; number < lines.size(); number++) {
      ConditionTable.Line line = lines.get(number);
      if (line.condition() instanceof Condition.OfReading of
          && of.what().equals(reading)
          && limit.equals(line.limit())) {
        across.flip(number);
      }
    }
    return across;
  }

  /**
   * The numbers of the rules that keep a technique or support from use on a foot that meets these
   * conditions: those that rule it out or leave it to the vet, and the calls for the vet now or
   * today. Much quicker than its verdict.
   */
  public BitSet barring(BitSet met, String subject) {
    BitSet barring = fired(met);
    barring.and(bars(subject));
    return barring;
  }

  private BitSet bars(String subject) {
    return barring.computeIfAbsent(
        subject,
        id -> {
          BitSet bars = new BitSet(rows.size());
          for (int number = 0; number < rows.size(); number++) {
            bars.set(number, bars(rows.get(number), id));
          }
          return bars;
        });
  }

  private static boolean bars(Row row, String subject) {
    if (row.rule().text().reserves().holdsBack(subject)) {
      return true;
    }
    RuleConclusion outcome = row.rule().outcome();
    boolean reason = bears(outcome, subject, Bearing.RULES_OUT, Bearing.NEEDS_VET);
    return !row.elsewhere() && reason;
  }

  /**
   * Whether some reason supports a technique or a support on a foot that meets these conditions.
   */
  public boolean spokenFor(BitSet met, String subject) {
    return fired(met).stream()
        .anyMatch(number -> bears(rows.get(number).rule().outcome(), subject, Bearing.FOR));
  }

  private static boolean bears(RuleConclusion outcome, String subject, Bearing... bearings) {
    return outcome instanceof RuleConclusion.Reasons reasons
        && List.of(bearings).contains(reasons.bearing())
        && reasons.subjects().contains(subject);
  }

  /** The numbers of the rules that fire on a foot that meets these conditions. */
  public BitSet fired(BitSet met) {
    BitSet fired = new BitSet(rows.size());
    BitSet given = (BitSet) met.clone();
    for (int number = 0; number < rows.size(); number++) {
      Row row = rows.get(number);
      if (all(row.lines(), given)) {
        fired.set(number);
        if (row.finds() != ConditionTable.NONE) {
          given.set(row.finds());
        }
      }
    }
    return fired;
  }

  private static boolean all(int[] asked, BitSet given) {
    for (int one : asked) {
      if (!given.get(one)) {
        return false;
      }
    }
    return true;
  }

  /** The rules with these numbers that belong to the foot itself. */
  public List<RuleEntry> rules(BitSet fired) {
    return fired.stream()
        .mapToObj(rows::get)
        .filter(row -> !row.elsewhere())
        .map(Row::rule)
        .toList();
  }

  /** What the advice on a foot comes to on which these rules fire. */
  public Outcome standing(BitSet fired, VetRole vet) {
    List<RuleState> states = new ArrayList<>();
    Set<String> findings = new TreeSet<>();
    Set<String> rules = new TreeSet<>();
    List<RuleEntry> others =
        fired.stream().mapToObj(rows::get).filter(Row::elsewhere).map(Row::rule).toList();
    rules(fired)
        .forEach(
            rule -> {
              states.add(new RuleState(rule, List.of()));
              rules.add(rule.id());
              if (rule.outcome() instanceof RuleConclusion.Finds finds) {
                findings.add(finds.finding());
              }
            });
    VetRole part = vet == VetRole.DIRECTING ? vet : VetRole.NONE;
    PossibleOutcomes prospects = new PossibleOutcomes(book, states, part, others);
    Map<String, Verdict> techniques = new LinkedHashMap<>();
    book.techniques().forEach(one -> techniques.put(one.id(), prospects.verdict(one.id())));
    Map<String, Verdict> supports = new LinkedHashMap<>();
    book.supports().forEach(one -> supports.put(one.id(), prospects.verdict(one.id())));
    Map<String, Urgency> referrals = prospects.told();
    Set<String> cautions = new TreeSet<>(prospects.warned());
    return new Outcome(techniques, supports, referrals, findings, cautions, rules);
  }
}
