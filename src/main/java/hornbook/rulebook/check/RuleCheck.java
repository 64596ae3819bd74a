package hornbook.rulebook.check;

import hornbook.rulebook.Condition;
import hornbook.rulebook.RuleConclusion;
import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.Subjects;
import hornbook.rulebook.Topic;
import hornbook.rulebook.Version;
import hornbook.rulebook.WordTest;
import hornbook.rulebook.fact.Limit;
import hornbook.rulebook.file.FaultCollector;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** Whether every rule has its place, asks for what there is, and cites what it rests on. */
final class RuleCheck {
  private final Rulebook book;
  private final FaultCollector faults;
  private final Set<String> limitIds = new TreeSet<>();
  private final Map<String, RuleEntry> titles = new HashMap<>();

  RuleCheck(Rulebook book, FaultCollector faults) {
    this.book = book;
    this.faults = faults;
    for (Limit limit : book.limits()) {
      limitIds.add(limit.id());
    }
  }

  void check() {
    book.rules().values().forEach(this::rule);
  }

  private void rule(RuleEntry rule) {
    home(rule);
    Set<String> bound = new LinkedHashSet<>();
    for (Condition condition : rule.conditions()) {
      if (!bound.add(condition.variable())) {
        faults.at(
            rule,
            "$" + condition.variable() + " is bound twice",
            "give each condition its own name");
      }
      condition(rule, condition, bound);
    }
    if (rule.conditions().stream().allMatch(Condition.OfLimit.class::isInstance)) {
      faults.at(
          rule,
          "the rule has no condition on the foot and would fire on every foot",
          "give it a condition on the foot");
    }
    limitsHeldAgainst(rule);
    cites(rule, bound);
    subjects(rule);
    rule.text().dissents().forEach(other -> dissents(rule, other));
  }

  private void home(RuleEntry rule) {
    Topic topic =
        book.topics().stream()
            .filter(one -> one.id().equals(rule.topic()))
            .findFirst()
            .orElse(null);
    List<String> known = book.topics().stream().map(Topic::id).toList();
    if (topic == null) {
      faults.at(
          rule,
          rule.topic().isEmpty() ? "the rule has no topic" : "there is no topic " + rule.topic(),
          FaultCollector.nearest("write @topic(…) with one of rulebook.yaml", rule.topic(), known));
    } else if (!rule.id().matches(topic.letter() + "\\d{3}")) {
      faults.at(rule, "the id does not fit its topic", "write " + topic.letter() + " and 3 digits");
    }
    if (topic != null && !rule.file().startsWith(topic.id() + "/")) {
      faults.at(rule, "the rule stands in " + rule.file() + ", not under its topic", "move it");
    }
    if (rule.since().isEmpty()) {
      faults.at(rule, "since is missing", "write @since(" + book.version() + ")");
    } else if (!Version.known(rule.since()) || Version.later(rule.since(), book.version())) {
      faults.at(
          rule,
          "since is " + rule.since() + ", which is no version up to " + book.version(),
          "write @since(" + book.version() + ")");
    }
    RuleEntry other = titles.put(rule.title(), rule);
    if (other != null) {
      faults.at(
          rule,
          "the title is already used by " + other.id() + " in " + other.file(),
          "say what is special to this one");
    }
  }

  private void condition(RuleEntry rule, Condition condition, Set<String> bound) {
    if (condition instanceof Condition.OfLimit limit && !limitIds.contains(limit.id())) {
      if (!faults.whole()) {
        return;
      }
      faults.at(
          rule,
          "there is no limit " + limit.id(),
          FaultCollector.nearest("write it into the topic's limits.yaml", limit.id(), limitIds));
    } else if (condition instanceof Condition.OfReading reading) {
      reading(rule, reading, bound);
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
      faults.at(
          rule,
          "there is no finding " + finding.what(),
          FaultCollector.nearest(
              "list it in a findings.yaml", finding.what(), book.findings().keySet()));
    }
  }

  private void reading(RuleEntry rule, Condition.OfReading reading, Set<String> bound) {
    if (!Subjects.isNumber(reading.what())) {
      faults.at(
          rule,
          Subjects.words(reading.what()) == null
              ? "there is no reading " + reading.what()
              : reading.what() + " is a word, not a number",
          Subjects.words(reading.what()) == null
              ? FaultCollector.nearest(
                  "fields are named as in the blank file, readings as in rules/README.md",
                  reading.what(),
                  Subjects.numbers())
              : "ask for it with Seen");
    }
    boolean limitAbove =
        rule.conditions().stream()
            .anyMatch(
                one ->
                    one instanceof Condition.OfLimit limit
                        && limit.variable().equals(reading.limit())
                        && bound.contains(limit.variable()));
    if (!limitAbove) {
      faults.at(
          rule,
          "$" + reading.limit() + " is used before any Limit is bound to it",
          "bind the Limit above");
    }
  }

  private void words(RuleEntry rule, String what, WordTest test, List<String> known) {
    if (known == null) {
      faults.at(
          rule,
          Subjects.isNumber(what)
              ? what + " is a number, not a word"
              : "there is no field " + what + " with words to see",
          Subjects.isNumber(what)
              ? "compare it with a limit: use Reading"
              : FaultCollector.nearest(
                  "fields are named as in the blank file", what, Subjects.wordFields()));
      return;
    }
    for (String word : test.words()) {
      if (!known.contains(word)) {
        faults.at(
            rule,
            what + " cannot be " + word,
            FaultCollector.nearest("one of " + String.join(", ", known), word, known));
      }
    }
  }

  /** A limit that is brought in and compared with nothing says nothing. */
  private void limitsHeldAgainst(RuleEntry rule) {
    for (Condition condition : rule.conditions()) {
      if (condition instanceof Condition.OfLimit limit
          && rule.conditions().stream()
              .noneMatch(
                  one ->
                      one instanceof Condition.OfReading reading
                          && reading.limit().equals(limit.variable()))) {
        faults.at(
            rule,
            "the limit $" + limit.variable() + " is compared with no reading",
            "write satisfies( $"
                + limit.variable()
                + " ) or misses( $"
                + limit.variable()
                + " ), or take it out");
      }
    }
  }

  private void cites(RuleEntry rule, Set<String> bound) {
    for (String cited : rule.outcome().cites()) {
      if (!bound.contains(cited)) {
        faults.at(
            rule,
            "the conclusion cites $" + cited + ", which no condition binds",
            FaultCollector.nearest("bind it, or cite another", cited, bound));
      }
    }
    Set<String> uncited = new LinkedHashSet<>(bound);
    rule.outcome().cites().forEach(uncited::remove);
    if (!uncited.isEmpty()) {
      faults.at(
          rule,
          "the conclusion does not cite $" + String.join(", $", uncited),
          "cite every fact the rule rests on");
    }
  }

  private void dissents(RuleEntry rule, String id) {
    RuleEntry other = book.rules().get(id);
    if (other == null) {
      faults.at(
          rule,
          "it dissents from " + id + ", but there is no such rule",
          FaultCollector.nearest("name the rule by its id", id, book.rules().keySet()));
    } else if (!(rule.outcome() instanceof RuleConclusion.Reasons own
        && other.outcome() instanceof RuleConclusion.Reasons of
        && own.bearing() != of.bearing()
        && of.subjects().stream().anyMatch(own.subjects()::contains))) {
      faults.at(
          rule,
          "it says it dissents from " + id + ", but does not say the opposite about the same thing",
          "take the dissent out, or name the rule that is meant");
    }
  }

  private void subjects(RuleEntry rule) {
    if (rule.outcome() instanceof RuleConclusion.Reasons reasons) {
      Set<String> known = new LinkedHashSet<>();
      book.techniques().forEach(one -> known.add(one.id()));
      book.supports().forEach(one -> known.add(one.id()));
      for (String subject : reasons.subjects()) {
        if (!known.contains(subject)) {
          faults.at(
              rule,
              "there is no technique or support " + subject,
              FaultCollector.nearest("they stand in rulebook.yaml", subject, known));
        }
      }
    } else if (rule.outcome() instanceof RuleConclusion.Finds finds
        && !book.findings().containsKey(finds.finding())) {
      faults.at(
          rule,
          "there is no finding " + finds.finding(),
          FaultCollector.nearest(
              "list it in the topic's findings.yaml", finds.finding(), book.findings().keySet()));
    }
  }
}
