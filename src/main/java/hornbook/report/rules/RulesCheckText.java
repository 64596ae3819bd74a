package hornbook.report.rules;

import hornbook.report.page.PlainPage;
import hornbook.report.words.Numbers;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.file.RuleFault;
import hornbook.study.rulecheck.RuleBaseCheck;

/** Tells in plain text what is wrong with a rule base, and what was looked over to find it. */
public final class RulesCheckText {
  private RulesCheckText() {}

  /**
   * The page.
   *
   * @param where the folder of the rules as the user knows it
   */
  public static String render(RuleBaseCheck check, String where) {
    PlainPage page = new PlainPage();
    page.heading("The rules of " + where + ", version " + check.book().version());
    page.paragraph(2, "read: " + read(check.book()));
    page.paragraph(2, run(check));
    for (RuleFault fault : check.faults()) {
      page.heading(fault.place() + ": " + named(fault) + fault.says());
      page.paragraph(4, fault.cure());
    }
    int faults = check.faults().size();
    page.heading(faults == 0 ? none(check) : Numbers.counted(faults, "fault") + ".");
    return page.text();
  }

  private static String none(RuleBaseCheck check) {
    return check.reach() == RuleBaseCheck.Reach.RUN
        ? "No fault found."
        : "No fault found in what was read.";
  }

  private static String named(RuleFault fault) {
    return fault.rule().isEmpty() ? "" : fault.rule() + ": ";
  }

  private static String read(Rulebook book) {
    return Numbers.counted(book.rules().size(), "rule")
        + ", "
        + Numbers.counted(book.limits().size(), "limit")
        + ", "
        + Numbers.counted(book.findings().size(), "finding")
        + ", "
        + Numbers.counted(book.sources().size(), "source")
        + ", "
        + Numbers.counted(book.instructions().size(), "sentence")
        + " of job sheets, "
        + Numbers.counted(book.glossary().size(), "word")
        + " of the glossary";
  }

  private static String run(RuleBaseCheck check) {
    return switch (check.reach()) {
      case RUN ->
          "run: "
              + Numbers.counted(check.cases(), "case")
              + ", each with its near-miss and the values about its limits, and "
              + check.feet()
              + " made-up feet";
      case FAULTY ->
          "not run: cases and contradictions are checked once the faults below are put right";
      case UNTRUSTED ->
          "not run: cases and contradictions are checked only"
              + " when the rules are fired. If you trust whoever wrote them, add"
              + " --trust-rules";
    };
  }
}
