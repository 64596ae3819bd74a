package hornbook.report.page;

/** A page of plain text as wide as the screen, put together line by line. */
public final class PlainPage {
  private final StringBuilder text = new StringBuilder();

  /** A heading, with an empty line before it unless it begins the page. */
  public PlainPage heading(String words) {
    if (!text.isEmpty()) {
      text.append('\n');
    }
    return hanging(0, 2, words);
  }

  /** A paragraph, so many columns in. */
  public PlainPage paragraph(int indent, String words) {
    return hanging(indent, indent, words);
  }

  /** A paragraph whose first line begins further left than the others. */
  public PlainPage hanging(int first, int others, String words) {
    LineWrap.lines(words.strip(), PageWidth.columns(), " ".repeat(first), " ".repeat(others))
        .forEach(line -> text.append(line).append('\n'));
    return this;
  }

  /** A line that is never broken: a command to copy. */
  public PlainPage asIs(int indent, String line) {
    text.append(" ".repeat(indent)).append(line).append('\n');
    return this;
  }

  public String text() {
    return text.toString();
  }
}
