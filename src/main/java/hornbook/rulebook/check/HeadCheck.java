package hornbook.rulebook.check;

import hornbook.rulebook.GlossaryTerm;
import hornbook.rulebook.NamedOption;
import hornbook.rulebook.RuleConclusion;
import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.Topic;
import hornbook.rulebook.Version;
import hornbook.rulebook.fact.Bearing;
import hornbook.rulebook.file.FaultCollector;
import hornbook.rulebook.file.RuleFault;
import hornbook.rulebook.file.RuleFiles;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;

/** Whether the head of a rule base, its glossary among it, is whole and put to use. */
final class HeadCheck {
  private final Rulebook book;
  private final FaultCollector faults;

  HeadCheck(Rulebook book, FaultCollector faults) {
    this.book = book;
    this.faults = faults;
  }

  void check() {
    if (!Version.known(book.version())) {
      fault("version", "\"" + book.version() + "\" is no version", "write it like 1.0.0");
    }
    topics();
    if (faults.whole()) {
      unused();
    }
  }

  private void unused() {
    Set<String> indicated = new HashSet<>();
    for (RuleEntry rule : book.rules().values()) {
      if (rule.outcome() instanceof RuleConclusion.Reasons reasons
          && reasons.bearing() == Bearing.FOR) {
        indicated.addAll(reasons.subjects());
      }
    }
    spokenFor(book.techniques(), indicated);
    spokenFor(book.supports(), indicated);
    glossary();
  }

  private void topics() {
    Map<String, Topic> letters = new HashMap<>();
    for (Topic topic : book.topics()) {
      Topic other = letters.put(topic.letter(), topic);
      if (other != null) {
        fault(topic.id(), "has the letter of " + other.id(), "give each topic its own letter");
      }
      if (faults.whole()
          && book.rules().values().stream().noneMatch(rule -> rule.topic().equals(topic.id()))) {
        fault(topic.id(), "no rule is of this topic", "write one, or take the topic out");
      }
    }
  }

  private void spokenFor(List<NamedOption> subjects, Set<String> indicated) {
    for (NamedOption subject : subjects) {
      if (!indicated.contains(subject.id())) {
        fault(
            subject.id(),
            "no rule gives a reason for it, so it is never indicated",
            "write a rule that does, or take it out");
      }
    }
  }

  private void fault(String name, String says, String cure) {
    faults.all().add(new RuleFault(RuleFiles.HEAD, 0, name, says, cure));
  }

  /** Every word of the glossary has to stand in some other text. */
  private void glossary() {
    StringBuilder texts = new StringBuilder();
    book.rules()
        .values()
        .forEach(
            rule -> {
              texts.append(rule.title()).append('\n').append(rule.why()).append('\n');
              texts.append(rule.silent()).append('\n').append(rule.text().says()).append('\n');
              texts.append(rule.text().meanwhile()).append('\n');
            });
    book.limits().forEach(limit -> texts.append(limit.label()).append('\n'));
    book.findings().values().forEach(finding -> texts.append(finding.label()).append('\n'));
    book.techniques().forEach(one -> texts.append(one.label()).append('\n'));
    book.supports().forEach(one -> texts.append(one.label()).append('\n'));
    for (GlossaryTerm term : book.glossary()) {
      String words = Pattern.quote(term.word());
      Pattern use = Pattern.compile("\\b" + words + "(s|es)?\\b", Pattern.CASE_INSENSITIVE);
      if (!use.matcher(texts).find()) {
        faults.at(
            term,
            term.word(),
            "no text uses this word",
            "take it out, or write it as the texts do");
      }
    }
  }
}
