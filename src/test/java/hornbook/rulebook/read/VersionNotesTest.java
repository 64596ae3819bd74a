package hornbook.rulebook.read;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.report.rules.VersionNotesText;
import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.VersionNote;
import hornbook.rulebook.fact.Limit;
import hornbook.rulebook.file.RuleFault;
import hornbook.rulebook.load.ShippedRules;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The version of the rules and what is written down of it keep step. */
class VersionNotesTest {
  private static final Rulebook BOOK = ShippedRules.book();

  @Test
  void the_newest_version_told_is_that_of_the_rules() throws Exception {
    List<VersionNote> notes = VersionNotes.read(Path.of("rules"));
    assertThat(notes.get(0).version()).isEqualTo(BOOK.version());
    assertThat(BOOK.rules().values().stream().map(RuleEntry::since).distinct())
        .isSubsetOf(notes.stream().map(VersionNote::version).toList());
    assertThat(VersionNotesText.render(notes)).contains("Version " + BOOK.version());
  }

  @Test
  void it_names_rules_and_limits_that_are_there() throws Exception {
    List<String> limits = BOOK.limits().stream().map(Limit::id).toList();
    for (VersionNote note : VersionNotes.read(Path.of("rules"))) {
      assertThat(BOOK.rules().keySet()).containsAll(note.rules());
      assertThat(limits).containsAll(note.limits());
    }
  }

  @Test
  void a_version_nobody_wrote_down_is_a_fault() {
    List<RuleFault> faults = new ArrayList<>();
    String text = "- {version: 1.0.0, date: 2026-11-25, says: [begun]}\n";
    VersionNotes.check(text, "1.0.0", List.of(), faults);
    assertThat(faults).isEmpty();
    VersionNotes.check(text, "1.1.0", List.of(), faults);
    assertThat(faults).singleElement().matches(fault -> fault.text().contains("1.1.0"));
    faults.clear();
    VersionNotes.check(text + text, "1.0.0", List.of(), faults);
    assertThat(faults).singleElement().matches(fault -> fault.line() == 2);
    faults.clear();
    VersionNotes.check("- {version: one, date: May, says: []}\n", "one", List.of(), faults);
    assertThat(faults).hasSize(3);
  }

  @Test
  void a_new_rule_needs_its_line_under_a_version_to_come() {
    RuleEntry rule = BOOK.rules().get("N003");
    String first = "- {version: 1.0.0, date: 2026-11-25, says: [begun]";
    List<RuleFault> faults = new ArrayList<>();
    VersionNotes.check(first + "}\n", "1.0.0", List.of(rule), faults);
    VersionNotes.check(first + ", all: 1}\n", "1.0.0", List.of(rule), faults);
    VersionNotes.check(first + ", rules: [N003]}\n", "1.0.0", List.of(rule), faults);
    assertThat(faults).isEmpty();
    VersionNotes.check(first + ", rules: [N004]}\n", "1.0.0", List.of(rule), faults);
    assertThat(faults)
        .singleElement()
        .matches(fault -> fault.rule().equals("N003"))
        .matches(fault -> fault.says().contains("does not name the rule under version 1.0.0"))
        .matches(fault -> fault.cure().contains("rules: [N003]"));
    faults.clear();
    VersionNotes.check(first.replace("1.0", "2.0") + "}\n", "2.0.0", List.of(rule), faults);
    assertThat(faults).singleElement().matches(fault -> fault.says().contains("no version 1.0.0"));
    faults.clear();
    RuleEntry other = BOOK.rules().get("N004");
    VersionNotes.check(first + ", all: 1}\n", "1.0.0", List.of(rule, other), faults);
    assertThat(faults)
        .singleElement()
        .matches(fault -> fault.says().contains("2 rules are since 1.0.0, which had 1"))
        .matches(fault -> fault.cure().contains("the next version"));
  }
}
