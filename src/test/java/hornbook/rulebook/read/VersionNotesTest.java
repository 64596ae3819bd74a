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
    VersionNotes.check(text, "1.0.0", faults);
    assertThat(faults).isEmpty();
    VersionNotes.check(text, "1.1.0", faults);
    assertThat(faults).singleElement().matches(fault -> fault.text().contains("1.1.0"));
    faults.clear();
    VersionNotes.check(text + text, "1.0.0", faults);
    assertThat(faults).singleElement().matches(fault -> fault.line() == 2);
    faults.clear();
    VersionNotes.check("- {version: one, date: May, says: []}\n", "one", faults);
    assertThat(faults).hasSize(3);
  }
}
