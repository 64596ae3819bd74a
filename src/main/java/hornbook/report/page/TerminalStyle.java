package hornbook.report.page;

import hornbook.report.page.Section.Kind;

/** Sets headings off on a terminal. The words carry the meaning; this only helps the eye. */
public enum TerminalStyle {
  NONE,
  TERMINAL;

  private static final String RESET = "\u001b[0m";
  private static final String BOLD = "\u001b[1m";
  private static final String RED = "\u001b[1;31m";
  private static final String GREEN = "\u001b[1;32m";

  public String heading(Kind kind, String line) {
    return switch (kind) {
      case REFERRAL, PROVISIONAL -> in(RED, line);
      case CHOICE -> line.startsWith(Section.CHOSEN) ? in(GREEN, line) : bold(line);
      default -> bold(line);
    };
  }

  public String bold(String line) {
    return in(BOLD, line);
  }

  private String in(String style, String line) {
    return this == NONE ? line : style + line + RESET;
  }
}
