package hornbook.rulebook;

import hornbook.assessment.Nearest;
import hornbook.rulebook.fact.Basis;
import hornbook.rulebook.fact.Limit;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Whether the parts of a rule base fit together: names, limits, sources, texts and their holes. */
final class RulebookCheck {
  private static final Pattern HOLE = Pattern.compile("\\{(\\w+)}");

  private static final Set<String> GROUNDLESS = Set.of("practice", "memory");

  private final Rulebook book;
  private final Map<String, String> textPlaces;
  private final Map<String, String> limitFiles;
  private final List<RuleFault> faults;
  private final Set<String> limitIds = new TreeSet<>();
  private final Set<String> usedSources = new HashSet<>();

  RulebookCheck(
      Rulebook book,
      Map<String, String> textPlaces,
      Map<String, String> limitFiles,
      List<RuleFault> faults) {
    this.book = book;
    this.textPlaces = textPlaces;
    this.limitFiles = limitFiles;
    this.faults = faults;
  }

  void check() {
    book.limits().forEach(this::limit);
    book.rules().values().forEach(this::rule);
    book.instructions().values().forEach(this::instruction);
    textPlaces.forEach(
        (id, place) -> {
          if (!book.rules().containsKey(id)) {
            faults.add(
                new RuleFault(
                    fileOf(place),
                    lineOf(place),
                    id,
                    "there is a text but no such rule",
                    "write the rule, or take the text out"));
          }
        });
    limitTwice();
    findingsMade();
    cycles();
  }

  private void limit(Limit limit) {
    limitIds.add(limit.id());
    String file = limitFiles.getOrDefault(limit.id(), "limits.yaml");
    source(file, 0, limit.id(), limit.source());
    limit.disputes().forEach(dispute -> source(file, 0, limit.id(), dispute.source()));
    ground(file, limit.id(), limit.basis(), List.of(limit.source()));
    if (limit.step() <= 0) {
      faults.add(new RuleFault(file, 0, limit.id(), "the step has to be above zero", ""));
    }
  }

  private void instruction(Instruction instruction) {
    String file = "plan/" + instruction.id().split("\\.")[0] + ".yaml";
    if (instruction.sources().isEmpty()) {
      faults.add(
          new RuleFault(
              file, 0, instruction.id(), "the instruction rests on no source", "name one"));
    }
    instruction.sources().forEach(key -> source(file, 0, instruction.id(), key));
    ground(file, instruction.id(), instruction.basis(), instruction.sources());
  }

  /** What is called published or quoted has to name the work. */
  private void ground(String file, String owner, Basis basis, List<String> sources) {
    boolean groundless = GROUNDLESS.containsAll(sources);
    if (groundless && (basis == Basis.PUBLISHED || basis == Basis.QUOTED)) {
      faults.add(
          new RuleFault(
              file,
              0,
              owner,
              "the basis is " + basis.word() + " but no work is named",
              "name the work, or say practice or memory"));
    }
  }

  private void limitTwice() {
    Map<String, Limit> seen = new HashMap<>();
    for (Limit limit : book.limits()) {
      for (Limit other : book.limits()) {
        boolean overlap =
            limit != other
                && limit.id().equals(other.id())
                && (limit.limbs() == null
                    || other.limbs() == null
                    || limit.limbs() == other.limbs())
                && (limit.age() == null || other.age() == null || limit.age() == other.age());
        if (overlap && seen.put(limit.id(), limit) == null) {
          faults.add(
              new RuleFault(
                  limitFiles.get(limit.id()),
                  0,
                  limit.id(),
                  "two entries hold for the same feet",
                  "give them limbs or age that differ"));
        }
      }
    }
  }

  private void source(String file, int line, String owner, String key) {
    usedSources.add(key);
    if (!key.isEmpty() && !book.sources().containsKey(key)) {
      faults.add(
          new RuleFault(
              file,
              line,
              owner,
              "there is no source " + key,
              "list it in sources.yaml" + nearest(key, book.sources().keySet())));
    }
  }

  private void rule(RuleEntry rule) {
    Topic topic =
        book.topics().stream()
            .filter(one -> one.id().equals(rule.topic()))
            .findFirst()
            .orElse(null);
    if (topic == null) {
      fault(rule, "there is no topic " + rule.topic(), "list it in rulebook.yaml");
    } else if (!rule.id().matches(topic.letter() + "\\d{3}")) {
      fault(rule, "the id does not fit its topic", "write " + topic.letter() + " and three digits");
    }
    if (topic != null && !rule.file().startsWith(topic.id() + "/")) {
      fault(rule, "the rule stands in " + rule.file() + " but says topic " + topic.id(), "move it");
    }
    if (rule.since().isEmpty()) {
      fault(rule, "since is missing", "write @since(" + book.version() + ")");
    }
    Set<String> bound = new LinkedHashSet<>();
    for (Condition condition : rule.conditions()) {
      if (!bound.add(condition.variable())) {
        fault(
            rule,
            "$" + condition.variable() + " is bound twice",
            "give each condition its own name");
      }
      condition(rule, condition, bound);
    }
    outcome(rule, bound);
    text(rule);
  }

  private void condition(RuleEntry rule, Condition condition, Set<String> bound) {
    if (condition instanceof Condition.OfLimit limit && !limitIds.contains(limit.id())) {
      fault(
          rule,
          "there is no limit " + limit.id(),
          "write it into the topic's limits.yaml" + nearest(limit.id(), limitIds));
    } else if (condition instanceof Condition.OfReading reading) {
      if (!Subjects.isNumber(reading.what())) {
        fault(
            rule,
            "there is no reading " + reading.what(),
            nearest(reading.what(), Subjects.numbers()));
      }
      boolean limitKnown =
          rule.conditions().stream()
              .anyMatch(
                  one ->
                      one instanceof Condition.OfLimit limit
                          && limit.variable().equals(reading.limit())
                          && bound.contains(limit.variable()));
      if (!limitKnown) {
        fault(
            rule,
            "$" + reading.limit() + " is used before any Limit is bound to it",
            "bind the Limit above");
      }
    } else if (condition instanceof Condition.OfSeen seen) {
      words(rule, seen.what(), seen.word(), Subjects.words(seen.what()));
    } else if (condition instanceof Condition.OfCrack crack) {
      crack.words().forEach((field, test) -> words(rule, field, test, Subjects.crackWords(field)));
    } else if (condition instanceof Condition.OfStretch stretch) {
      stretch
          .words()
          .forEach((field, test) -> words(rule, field, test, Subjects.stretchWords(field)));
    } else if (condition instanceof Condition.OfFinding finding
        && !book.findings().containsKey(finding.what())) {
      fault(
          rule,
          "there is no finding " + finding.what(),
          "list it in a findings.yaml" + nearest(finding.what(), book.findings().keySet()));
    }
  }

  private void words(RuleEntry rule, String what, WordTest test, List<String> known) {
    if (known == null) {
      fault(
          rule,
          "there is no field " + what + " with words to see",
          nearest(what, Subjects.wordFields()));
      return;
    }
    for (String word : test.words()) {
      if (!known.contains(word)) {
        fault(rule, what + " cannot be " + word, "one of " + known);
      }
    }
  }

  private void outcome(RuleEntry rule, Set<String> bound) {
    Outcome outcome = rule.outcome();
    for (String cited : outcome.cites()) {
      if (!bound.contains(cited)) {
        fault(rule, "the conclusion cites $" + cited + ", which no condition binds", "");
      }
    }
    Set<String> uncited = new LinkedHashSet<>(bound);
    outcome.cites().forEach(uncited::remove);
    if (!uncited.isEmpty()) {
      fault(
          rule,
          "the conclusion does not cite $" + String.join(", $", uncited),
          "cite every fact the rule rests on");
    }
    if (outcome instanceof Outcome.Reasons reasons) {
      for (String subject : reasons.subjects()) {
        if (book.technique(subject) == null && book.support(subject) == null) {
          fault(rule, "there is no technique or support " + subject, "");
        }
      }
    } else if (outcome instanceof Outcome.Finds finds
        && !book.findings().containsKey(finds.finding())) {
      fault(rule, "there is no finding " + finds.finding(), "list it in the topic's findings.yaml");
    }
    if (outcome instanceof Outcome.Refers && rule.text().meanwhile() == null) {
      fault(
          rule, "a referral has to say what to do meanwhile", "write meanwhile: … beside its says");
    }
  }

  private void text(RuleEntry rule) {
    Set<String> cited = new HashSet<>(rule.outcome().cites());
    for (String text :
        List.of(
            rule.text().says(), rule.text().meanwhile() == null ? "" : rule.text().meanwhile())) {
      Matcher hole = HOLE.matcher(text);
      while (hole.find()) {
        if (!cited.contains(hole.group(1))) {
          fault(
              rule,
              "the text has a hole {" + hole.group(1) + "} that no cited fact fills",
              "name it as the rule does");
        }
      }
    }
    rule.text().sources().forEach(key -> source(rule.file(), rule.line(), rule.id(), key));
    boolean limitsNameSource = rule.limits().findAny().isPresent();
    if (rule.text().sources().isEmpty() && !limitsNameSource) {
      fault(
          rule,
          "the rule rests on no source",
          "write sources: […] beside its says; practice and memory are sources too");
    }
    for (String technique : rule.text().techniques()) {
      if (book.technique(technique) == null) {
        fault(rule, "there is no technique " + technique, "");
      }
    }
  }

  private void findingsMade() {
    Set<String> made = new HashSet<>();
    for (RuleEntry rule : book.rules().values()) {
      if (rule.outcome() instanceof Outcome.Finds finds) {
        made.add(finds.finding());
      }
    }
    for (FindingKind finding : book.findings().values()) {
      if (!made.contains(finding.id())) {
        faults.add(
            new RuleFault(
                finding.topic() + "/findings.yaml",
                0,
                finding.id(),
                "no rule makes this finding",
                "write the rule, or take the finding out"));
      }
    }
  }

  /** A finding that rests on itself would never be settled. */
  private void cycles() {
    Map<String, Set<String>> needs = new HashMap<>();
    for (RuleEntry rule : book.rules().values()) {
      if (rule.outcome() instanceof Outcome.Finds finds) {
        for (Condition condition : rule.conditions()) {
          if (condition instanceof Condition.OfFinding finding) {
            needs.computeIfAbsent(finds.finding(), key -> new TreeSet<>()).add(finding.what());
          }
        }
      }
    }
    for (String start : new TreeSet<>(needs.keySet())) {
      if (reaches(needs, start, start, new HashSet<>())) {
        faults.add(new RuleFault("", 0, start, "the finding rests on itself", "break the circle"));
      }
    }
  }

  private static boolean reaches(
      Map<String, Set<String>> needs, String from, String goal, Set<String> seen) {
    for (String next : needs.getOrDefault(from, Set.of())) {
      if (next.equals(goal) || (seen.add(next) && reaches(needs, next, goal, seen))) {
        return true;
      }
    }
    return false;
  }

  private static String nearest(String word, java.util.Collection<String> known) {
    String nearest = Nearest.of(word, List.copyOf(known));
    return nearest == null ? "" : "; did you mean " + nearest + "?";
  }

  private void fault(RuleEntry rule, String says, String cure) {
    faults.add(
        new RuleFault(
            rule.file(),
            rule.line(),
            rule.id(),
            says,
            cure.startsWith("; ") ? cure.substring(2) : cure));
  }

  private static String fileOf(String place) {
    return place.substring(0, place.lastIndexOf(':'));
  }

  private static int lineOf(String place) {
    return Integer.parseInt(place.substring(place.lastIndexOf(':') + 1));
  }
}
