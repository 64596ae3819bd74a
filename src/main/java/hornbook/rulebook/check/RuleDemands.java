package hornbook.rulebook.check;

import hornbook.rulebook.Condition;
import hornbook.rulebook.FootKind;
import hornbook.rulebook.Range;
import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.Subjects;
import hornbook.rulebook.WordTest;
import hornbook.rulebook.fact.Limit;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * What a rule asks of one kind of foot, however it is written: for every number the range that will
 * do, for every field the words, and the cracks, stretches and findings it wants. Two rules that
 * ask the same have equal askings.
 */
final class RuleDemands {
  static final String NO_LIMIT = " holds for no such foot";
  static final String BOTH_SIDES = " would have to lie on both sides at once";

  private final Map<String, Range> numbers = new TreeMap<>();

  /** For each field the sets of words of which one each has to be seen. */
  private final Map<String, Set<Set<String>>> words = new TreeMap<>();

  private final Set<Map<String, Set<String>>> cracks = new HashSet<>();
  private final Set<Map<String, Set<String>>> stretches = new HashSet<>();
  private final Set<String> findings = new TreeSet<>();

  /** Why no such foot can ever give the rule what it asks, or null. */
  private String hindrance;

  /** What the rule asks of a foot of this kind. */
  static RuleDemands of(RuleEntry rule, FootKind kind, Rulebook book) {
    RuleDemands asked = new RuleDemands();
    Map<String, Limit> bound = new HashMap<>();
    for (Condition condition : rule.conditions()) {
      if (condition instanceof Condition.OfLimit limit) {
        asked.limit(limit, kind, book, bound);
      } else if (condition instanceof Condition.OfReading reading) {
        Limit limit = bound.get(reading.limit());
        if (limit != null) {
          asked.number(reading.what(), Range.of(limit, reading.satisfies()));
        }
      } else if (condition instanceof Condition.OfSeen seen) {
        asked.word(seen, kind);
      } else if (condition instanceof Condition.OfCrack crack) {
        asked.cracks.add(passing(crack.words(), Subjects::crackWords));
      } else if (condition instanceof Condition.OfStretch stretch) {
        asked.stretches.add(passing(stretch.words(), Subjects::stretchWords));
      } else if (condition instanceof Condition.OfFinding finding) {
        asked.findings.add(finding.what());
      }
    }
    asked.settle();
    return asked;
  }

  /** What two rules ask together of the same foot. */
  RuleDemands and(RuleDemands other) {
    RuleDemands both = new RuleDemands();
    both.hindrance = hindrance == null ? other.hindrance : hindrance;
    for (RuleDemands one : List.of(this, other)) {
      one.numbers.forEach(both::number);
      one.words.forEach((field, sets) -> both.words(field).addAll(sets));
      both.cracks.addAll(one.cracks);
      both.stretches.addAll(one.stretches);
      both.findings.addAll(one.findings);
    }
    both.settle();
    return both;
  }

  String hindrance() {
    return hindrance;
  }

  boolean possible() {
    return hindrance == null;
  }

  Set<String> findings() {
    return findings;
  }

  /** Whether whatever gives this what it asks also gives the other what it asks. */
  boolean covers(RuleDemands other) {
    for (Map.Entry<String, Range> number : other.numbers.entrySet()) {
      Range own = numbers.get(number.getKey());
      if (own == null || !own.within(number.getValue())) {
        return false;
      }
    }
    for (Map.Entry<String, Set<Set<String>>> field : other.words.entrySet()) {
      Set<Set<String>> own = words.getOrDefault(field.getKey(), Set.of());
      for (Set<String> wanted : field.getValue()) {
        if (own.stream().noneMatch(wanted::containsAll)) {
          return false;
        }
      }
    }
    return rows(cracks, other.cracks)
        && rows(stretches, other.stretches)
        && findings.containsAll(other.findings);
  }

  private static boolean rows(
      Set<Map<String, Set<String>>> own, Set<Map<String, Set<String>>> wanted) {
    return wanted.stream().allMatch(want -> own.stream().anyMatch(row -> row(row, want)));
  }

  private static boolean row(Map<String, Set<String>> own, Map<String, Set<String>> wanted) {
    return wanted.entrySet().stream()
        .allMatch(
            test ->
                own.containsKey(test.getKey())
                    && test.getValue().containsAll(own.get(test.getKey())));
  }

  private void limit(
      Condition.OfLimit wanted, FootKind kind, Rulebook book, Map<String, Limit> bound) {
    for (Limit limit : book.limits()) {
      if (limit.id().equals(wanted.id()) && kind.holds(limit)) {
        bound.put(wanted.variable(), limit);
        return;
      }
    }
    hinder(wanted.id() + NO_LIMIT);
  }

  private void number(String what, Range range) {
    numbers.merge(what, range, Range::and);
  }

  private void word(Condition.OfSeen seen, FootKind kind) {
    List<String> known = Subjects.words(seen.what());
    if (known == null) {
      return;
    }
    Set<String> will = passing(seen.word(), known);
    String own = kind.word(seen.what());
    if (own != null && !will.contains(own)) {
      hinder(Subjects.label(seen.what()) + " is " + own);
    }
    words(seen.what()).add(will);
  }

  private Set<Set<String>> words(String field) {
    return words.computeIfAbsent(field, key -> new HashSet<>());
  }

  private static Map<String, Set<String>> passing(
      Map<String, WordTest> tests, java.util.function.Function<String, List<String>> known) {
    Map<String, Set<String>> passing = new TreeMap<>();
    tests.forEach(
        (field, test) -> {
          List<String> words = known.apply(field);
          passing.put(field, passing(test, words == null ? List.of() : words));
        });
    return passing;
  }

  private static Set<String> passing(WordTest test, List<String> known) {
    return new TreeSet<>(known.stream().filter(test::passes).toList());
  }

  private void hinder(String why) {
    hindrance = hindrance == null ? why : hindrance;
  }

  /** Brings the words of a field together, and looks for what cannot be. */
  private void settle() {
    numbers.forEach(
        (what, range) -> {
          if (range.empty()) {
            hinder(Subjects.label(what) + BOTH_SIDES);
          } else if (range.and(Subjects.bounds(what)).empty()) {
            hinder(Subjects.label(what) + " cannot be so great or so small");
          }
        });
    words.replaceAll((field, sets) -> Subjects.several(field) ? sets : Set.of(common(sets)));
    words.forEach(
        (field, sets) -> {
          if (sets.stream().anyMatch(Set::isEmpty) || noneAndSome(sets)) {
            hinder(Subjects.label(field) + " would have to show two words at once");
          }
        });
    withoutWiderWords();
    boolean none = words.getOrDefault("cracks", Set.of()).contains(Set.of("none"));
    if (none && !cracks.isEmpty()) {
      hinder("there would have to be a crack and no crack");
    }
  }

  /** Of words asked twice in a list, the narrower asking says it all. */
  private void withoutWiderWords() {
    words.replaceAll(
        (field, sets) -> {
          Set<Set<String>> narrow = new HashSet<>();
          for (Set<String> one : sets) {
            boolean wider =
                sets.stream().anyMatch(other -> !other.equals(one) && one.containsAll(other));
            if (!wider) {
              narrow.add(one);
            }
          }
          return narrow;
        });
  }

  private static Set<String> common(Set<Set<String>> sets) {
    List<Set<String>> all = new ArrayList<>(sets);
    Set<String> common = new TreeSet<>(all.get(0));
    all.forEach(common::retainAll);
    return common;
  }

  /** A list that was found empty shows the one word none. */
  private static boolean noneAndSome(Set<Set<String>> sets) {
    Set<String> none = Set.of("none");
    return sets.contains(none) && sets.stream().anyMatch(one -> !one.contains("none"));
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof RuleDemands asked
        && numbers.equals(asked.numbers)
        && words.equals(asked.words)
        && cracks.equals(asked.cracks)
        && stretches.equals(asked.stretches)
        && findings.equals(asked.findings);
  }

  @Override
  public int hashCode() {
    return java.util.Objects.hash(numbers, words, cracks, stretches, findings);
  }
}
