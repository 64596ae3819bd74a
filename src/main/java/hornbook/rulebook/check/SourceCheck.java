package hornbook.rulebook.check;

import hornbook.rulebook.Instruction;
import hornbook.rulebook.ReadingKind;
import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.Source;
import hornbook.rulebook.fact.Basis;
import hornbook.rulebook.fact.Limit;
import hornbook.rulebook.file.FaultCollector;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Whether everything names a source that is listed, no better than it is, and all are used. */
final class SourceCheck {
  private final Rulebook book;
  private final FaultCollector faults;
  private final Set<String> used = new HashSet<>();

  SourceCheck(Rulebook book, FaultCollector faults) {
    this.book = book;
    this.faults = faults;
  }

  void check() {
    book.limits().forEach(this::limit);
    book.rules().values().forEach(this::rule);
    book.instructions().values().forEach(this::instruction);
    for (ReadingKind reading : ReadingKind.values()) {
      used.addAll(reading.sources());
    }
    for (Source source : book.sources().values()) {
      if (faults.whole() && !used.contains(source.key())) {
        faults.at(
            source,
            source.key(),
            "no rule, limit or reading names this source",
            "name it where it is the source, or take it out");
      }
    }
  }

  private void limit(Limit limit) {
    List<String> keys = new ArrayList<>(List.of(limit.source()));
    limit.disputes().forEach(dispute -> keys.add(dispute.source()));
    known(limit, limit.id(), keys);
    // A locator may name the key of a second work that agrees.
    used.addAll(book.worksNamed(limit));
    ground(limit, limit.id(), limit.basis(), List.of(limit.source()));
  }

  private void rule(RuleEntry rule) {
    List<String> keys = rule.text().sources();
    faults.place(rule, rule.file(), rule.line());
    known(rule, rule.id(), keys);
    List<String> grounds = new ArrayList<>(keys);
    for (Limit limit : book.limits()) {
      if (rule.limits().anyMatch(limit.id()::equals)) {
        grounds.add(limit.source());
      }
    }
    if (rule.text().says().isEmpty()) {
      return;
    }
    if (grounds.isEmpty()) {
      faults.at(
          rule,
          "the rule rests on no source",
          "write sources: […] beside its says; practice and memory are sources too");
    } else {
      ground(rule, rule.id(), rule.basis(), grounds);
    }
  }

  private void instruction(Instruction instruction) {
    known(instruction, instruction.id(), instruction.sources());
    if (instruction.sources().isEmpty()) {
      faults.at(instruction, instruction.id(), "the instruction rests on no source", "name one");
    } else {
      ground(instruction, instruction.id(), instruction.basis(), instruction.sources());
    }
  }

  private void known(Object part, String name, List<String> keys) {
    for (String key : keys) {
      used.add(key);
      if (!key.isEmpty() && !book.sources().containsKey(key)) {
        faults.at(
            part,
            name,
            "there is no source " + key,
            FaultCollector.nearest("list it in sources.yaml", key, book.sources().keySet()));
      }
    }
  }

  /** What is called published or quoted has to name the work. */
  private void ground(Object part, String name, Basis basis, List<String> keys) {
    boolean workNamed = keys.stream().anyMatch(Source::work);
    if (!workNamed && (basis == Basis.PUBLISHED || basis == Basis.QUOTED)) {
      faults.at(
          part,
          name,
          "the basis is " + basis.word() + " but no work is named",
          "name the work, or say practice or memory");
    }
  }
}
