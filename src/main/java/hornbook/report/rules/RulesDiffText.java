package hornbook.report.rules;

import hornbook.report.page.PlainPage;
import hornbook.report.words.FieldNames;
import hornbook.report.words.Numbers;
import hornbook.report.words.PlainWords;
import hornbook.rulebook.NamedOption;
import hornbook.rulebook.Rulebook;
import hornbook.study.compare.RulesDiff;
import hornbook.study.compare.RulesDiff.CaseChange;
import hornbook.study.compare.RulesDiff.Part;
import hornbook.study.compare.RulesDiff.Turn;
import java.util.List;

/** Tells in plain text how two rule bases differ. */
public final class RulesDiffText {
  private final RulesDiff diff;
  private final PlainPage page = new PlainPage();

  private RulesDiffText(RulesDiff diff) {
    this.diff = diff;
  }

  public static String render(RulesDiff diff) {
    return new RulesDiffText(diff).page();
  }

  private String page() {
    page.heading("From " + named(diff.before()) + " to " + named(diff.after()));
    parts("LIMITS", diff.parts().stream().filter(part -> !part.rule()).toList());
    parts("RULES", diff.parts().stream().filter(Part::rule).toList());
    long cases = diff.cases().stream().map(CaseChange::name).distinct().count();
    page.heading("ADVICE");
    page.paragraph(
        2,
        cases == 0
            ? "the same on every foot of every case (" + diff.run() + " feet run)"
            : Numbers.counted((int) cases, "case")
                + " with other advice ("
                + diff.run()
                + " feet run)");
    diff.cases().forEach(this::change);
    return page.text();
  }

  private static String named(Rulebook book) {
    String practice = book.practice() == null ? "" : ", practice " + book.practice().name();
    return book.version() + practice + " (" + book.digest().substring(0, 15) + ")";
  }

  private void parts(String heading, List<Part> parts) {
    page.heading(heading);
    if (parts.isEmpty()) {
      page.paragraph(2, "the same");
    }
    for (Part part : parts) {
      String fate =
          switch (part.fate()) {
            case ADDED -> "added: ";
            case REMOVED -> "removed: ";
            case CHANGED -> "changed: ";
          };
      String how = part.how().isEmpty() ? "" : ": " + String.join("; ", part.how());
      page.hanging(2, 4, fate + part.id() + " (" + part.label() + ")" + how);
    }
  }

  private void change(CaseChange change) {
    page.hanging(2, 4, change.name() + ", " + FieldNames.of(change.limb()));
    change.turns().forEach(turn -> page.hanging(4, 6, turn(turn)));
  }

  private String turn(Turn turn) {
    boolean technique = turn.what().equals("first-choice");
    String before = technique ? label(turn.before()) : PlainWords.of(turn.before());
    String after = technique ? label(turn.after()) : PlainWords.of(turn.after());
    String what =
        switch (turn.what()) {
          case "first-choice" -> "first choice";
          case "urgency" -> "how soon the vet";
          case "referrals" -> "calls for the vet";
          case "cautions" -> "cautions";
          default -> label(turn.what());
        };
    return what + ": " + before + " -> " + after;
  }

  private String label(String id) {
    for (Rulebook book : List.of(diff.after(), diff.before())) {
      NamedOption named = book.technique(id) == null ? book.support(id) : book.technique(id);
      if (named != null) {
        return named.label();
      }
    }
    return id;
  }
}
