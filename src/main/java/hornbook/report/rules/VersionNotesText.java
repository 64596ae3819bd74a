package hornbook.report.rules;

import hornbook.report.advice.PageHead;
import hornbook.report.page.PlainPage;
import hornbook.rulebook.VersionNote;
import java.time.LocalDate;
import java.util.List;

/** The versions of a rule base in plain text. */
public final class VersionNotesText {
  private VersionNotesText() {}

  public static String render(List<VersionNote> notes) {
    PlainPage page = new PlainPage();
    for (VersionNote note : notes) {
      page.heading(
          "Version " + note.version() + ", " + PageHead.spoken(LocalDate.parse(note.date())));
      note.says().forEach(says -> page.hanging(2, 4, "- " + says.strip()));
      if (!note.rules().isEmpty()) {
        page.hanging(2, 4, "rules: " + String.join(", ", note.rules()));
      }
      if (!note.limits().isEmpty()) {
        page.hanging(2, 4, "limits: " + String.join(", ", note.limits()));
      }
    }
    return page.text();
  }
}
