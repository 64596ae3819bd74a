package hornbook.advice.condition;

import hornbook.advice.fact.FactSheet;
import hornbook.advice.fact.Truth;
import hornbook.rulebook.Condition;
import hornbook.rulebook.RuleConclusion;
import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.WordTest;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Some rules of a book with their conditions numbered: a condition that several rules share has one
 * number, a line of the table, and is looked at once. A row for each rule, behind the rows of those
 * that make the findings it builds on, which come with it.
 */
public final class ConditionTable {
  /** In place of a line, for a rule that makes no finding that another builds on. */
  public static final int NONE = -1;

  private static final String FINDING = "finding ";

  private static volatile ConditionTable last;

  private final Rulebook book;
  private final List<Row> rows = new ArrayList<>();
  private final List<Line> lines = new ArrayList<>();

  /**
   * A rule.
   *
   * @param lines the line of each of its conditions, in order
   * @param finds the line of the finding it makes
   */
  public record Row(RuleEntry rule, int[] lines, int finds) {}

  /**
   * A condition as the first rule has it that asks it, and the limit a reading is compared with.
   *
   * @param makers the rows of the rules that make the finding; null for other conditions
   */
  public record Line(Condition condition, String limit, int[] makers) {
    /** Whether it certainly holds on a foot, by what was seen there; a finding does not. */
    public boolean holds(FactSheet sheet) {
      return makers == null && Conditions.of(condition, limit, sheet) == Truth.TRUE;
    }
  }

  /** The table of all rules of a book; the last one asked for is kept. */
  public static ConditionTable of(Rulebook book) {
    ConditionTable known = last;
    if (known == null || known.book != book) {
      known = new ConditionTable(book, book.rules().values());
      last = known;
    }
    return known;
  }

  public ConditionTable(Rulebook book, Collection<RuleEntry> wanted) {
    this.book = book;
    List<RuleEntry> ordered = makersFirst(book, wanted);
    Map<String, List<Integer>> makers = new HashMap<>();
    for (int row = 0; row < ordered.size(); row++) {
      if (ordered.get(row).outcome() instanceof RuleConclusion.Finds finds) {
        makers.computeIfAbsent(finds.finding(), any -> new ArrayList<>()).add(row);
      }
    }
    Map<String, Integer> numbers = new HashMap<>();
    List<int[]> asked = new ArrayList<>(ordered.size());
    for (RuleEntry rule : ordered) {
      int[] own = new int[rule.conditions().size()];
      for (int place = 0; place < own.length; place++) {
        Condition condition = rule.conditions().get(place);
        Integer known = numbers.putIfAbsent(key(rule, condition), lines.size());
        own[place] = known == null ? lines.size() : known;
        if (known == null) {
          lines.add(line(rule, condition, makers));
        }
      }
      asked.add(own);
    }
    for (int row = 0; row < ordered.size(); row++) {
      RuleEntry rule = ordered.get(row);
      boolean asks = rule.outcome() instanceof RuleConclusion.Finds;
      String finding = asks ? ((RuleConclusion.Finds) rule.outcome()).finding() : "";
      rows.add(new Row(rule, asked.get(row), numbers.getOrDefault(FINDING + finding, NONE)));
    }
  }

  private static Line line(RuleEntry rule, Condition condition, Map<String, List<Integer>> makers) {
    if (condition instanceof Condition.OfFinding finding) {
      List<Integer> all = makers.getOrDefault(finding.what(), List.of());
      return new Line(condition, null, all.stream().mapToInt(Integer::intValue).toArray());
    }
    boolean reading = condition instanceof Condition.OfReading;
    String variable = reading ? ((Condition.OfReading) condition).limit() : null;
    return new Line(condition, reading ? rule.limitBoundTo(variable) : null, null);
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
        ? FINDING + finding.what()
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

  /** The rows: each rule behind those that make what it builds on. */
  public List<Row> rows() {
    return Collections.unmodifiableList(rows);
  }

  public List<Line> lines() {
    return Collections.unmodifiableList(lines);
  }

  private static List<RuleEntry> makersFirst(Rulebook book, Collection<RuleEntry> wanted) {
    Map<String, List<RuleEntry>> makers = makers(book.rules().values());
    Set<RuleEntry> known = Collections.newSetFromMap(new IdentityHashMap<>());
    List<RuleEntry> ordered = new ArrayList<>();
    for (RuleEntry rule : wanted) {
      add(rule, makers, known, ordered);
    }
    return ordered;
  }

  /** The rules that make each finding. */
  public static Map<String, List<RuleEntry>> makers(Collection<RuleEntry> rules) {
    Map<String, List<RuleEntry>> makers = new HashMap<>();
    for (RuleEntry rule : rules) {
      if (rule.outcome() instanceof RuleConclusion.Finds finds) {
        makers.computeIfAbsent(finds.finding(), any -> new ArrayList<>()).add(rule);
      }
    }
    return makers;
  }

  private static void add(
      RuleEntry rule,
      Map<String, List<RuleEntry>> makers,
      Set<RuleEntry> known,
      List<RuleEntry> to) {
    if (known.contains(rule)) {
      return;
    }
    for (Condition condition : rule.conditions()) {
      if (condition instanceof Condition.OfFinding finding) {
        makers.getOrDefault(finding.what(), List.of()).forEach(one -> add(one, makers, known, to));
      }
    }
    known.add(rule);
    to.add(rule);
  }
}
