package hornbook.rules;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.rulebook.Rulebook;
import hornbook.rulebook.file.RuleFault;
import hornbook.rulebook.read.RulebookReader;
import hornbook.study.rulecase.CaseCheck;
import hornbook.study.rulecase.CaseLibrary;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Whoever changes what a rule concludes, and nothing else, is told by the rule's own case: tried
 * with every change of one word in the conclusion of every rule, written as a rule file and read
 * from there. {@link RuleCasesTest} holds what the engine concludes to the same cases.
 */
class MutatedConclusionsTest {
  /** A rule with its comment: its id, and the kind, manner and names of its conclusion. */
  private static final Pattern RULE =
      Pattern.compile(
          "(?m)(?:^//[^\\n]*\\n)+^rule (?:(?!^end\\b)[^@])*@id\\((\\w+)\\)(?:(?!^end\\b).)*?"
              + "insert\\(\\s*((\\w+)\\.(\\w+)\\(\\s*\"([^\"]*)\").*?^end\\n",
          Pattern.DOTALL);

  private static final List<String> URGENCIES = List.of("now", "today", "days", "mention");
  private static final List<String> BEARINGS =
      List.of("speaksFor", "speaksAgainst", "needs", "needsVet", "rulesOut");

  @TempDir private Path folder;

  @Test
  void every_change_of_a_conclusion_fails_the_rules_own_case() throws Exception {
    CaseLibrary library = CaseLibrary.read(Path.of("cases"));
    List<MatchResult> rules = rules();
    assertThat(rules.stream().map(rule -> rule.group(1)))
        .containsExactlyInAnyOrderElementsOf(Shipped.BOOK.rules().keySet());
    int most = rules.stream().mapToInt(rule -> ways(rule).size()).max().orElseThrow();
    for (int way = 0; way < most; way++) {
      Set<String> changed = writeMutants(rules, way);
      Rulebook book = RulebookReader.inspect(folder).book();
      Set<String> told =
          CaseCheck.written(book, library).stream()
              .filter(fault -> fault.says().contains("but the rule concludes"))
              .map(RuleFault::rule)
              .collect(Collectors.toCollection(TreeSet::new));
      assertThat(told).as("change %s of each rule that has so many", way).isEqualTo(changed);
    }
  }

  /** Writes the rules that have so many-eth a change, each with it, and gives their ids. */
  private Set<String> writeMutants(List<MatchResult> rules, int way) throws IOException {
    Set<String> changed = new TreeSet<>();
    StringBuilder mutants = new StringBuilder();
    for (MatchResult rule : rules) {
      List<String> ways = ways(rule);
      if (way < ways.size()) {
        changed.add(rule.group(1));
        int from = rule.start(2) - rule.start();
        int to = rule.end(2) - rule.start();
        mutants.append(rule.group(), 0, from).append(ways.get(way));
        mutants.append(rule.group().substring(to)).append('\n');
      }
    }
    Path file = folder.resolve("mutants/all.drl");
    Files.createDirectories(file.getParent());
    Files.writeString(file, mutants);
    return changed;
  }

  /** All other conclusions that differ in one word; every rule has one at least. */
  private static List<String> ways(MatchResult rule) {
    String kind = rule.group(3);
    String manner = rule.group(4);
    String names = rule.group(5);
    List<String> ways = new ArrayList<>();
    switch (kind) {
      case "Reason" -> {
        others(BEARINGS, manner).forEach(other -> ways.add(call(kind, other, names)));
        List<String> subjects = List.of(names.split(" "));
        for (String subject : subjects) {
          String fewer = String.join(" ", others(subjects, subject));
          ways.add(call(kind, manner, fewer.isEmpty() ? another(subjects) : fewer));
        }
        ways.add(call(kind, manner, names + " " + another(subjects)));
      }
      case "Referral" -> {
        others(URGENCIES, manner).forEach(other -> ways.add(call(kind, other, names)));
        ways.add(call(kind, manner, names + "-too"));
      }
      default -> ways.add(call(kind, manner, names + "-too"));
    }
    return ways;
  }

  private static List<String> others(List<String> all, String one) {
    return all.stream().filter(other -> !other.equals(one)).toList();
  }

  /** A technique, or a support, that a rule does not name yet. */
  private static String another(List<String> subjects) {
    return Stream.concat(Shipped.BOOK.techniques().stream(), Shipped.BOOK.supports().stream())
        .map(named -> named.id())
        .filter(id -> !subjects.contains(id))
        .findFirst()
        .orElseThrow();
  }

  private static String call(String kind, String manner, String names) {
    return kind + "." + manner + "( \"" + names + "\"";
  }

  private static List<MatchResult> rules() throws IOException {
    List<MatchResult> rules = new ArrayList<>();
    try (Stream<Path> walk = Files.walk(Path.of("rules"))) {
      for (Path file : walk.filter(one -> one.toString().endsWith(".drl")).sorted().toList()) {
        Matcher rule = RULE.matcher(Files.readString(file));
        while (rule.find()) {
          rules.add(rule.toMatchResult());
        }
      }
    }
    return rules;
  }
}
