package hornbook.assessment.form;

/** Lines of YAML with their comments, none longer than 100 columns where words can be broken. */
final class CommentedYaml {
  private static final int COLUMNS = 100;

  private final StringBuilder text = new StringBuilder();
  private int commentedFrom = -1;
  private int dash = -1;

  void verbatim(String line) {
    text.append(line).append('\n');
  }

  /** A line, with a remark behind it if there is room, else above it. */
  void line(int indent, String line, String remark) {
    String start = start(indent) + line;
    String end = remark.isEmpty() ? "" : "  # " + remark;
    if (start.length() + end.length() <= COLUMNS) {
      verbatim(start + end);
    } else {
      comment(indent, remark);
      verbatim(start(indent) + line);
    }
    dash = -1;
  }

  /** A comment, over as many lines as it takes. */
  void comment(int indent, String words) {
    String margin = margin(indent) + "# ";
    StringBuilder line = new StringBuilder();
    for (String word : words.split(" ")) {
      if (line.length() > 0 && margin.length() + line.length() + 1 + word.length() > COLUMNS) {
        verbatim(margin + line);
        line.setLength(0);
      }
      line.append(line.length() == 0 ? "" : " ").append(word);
    }
    verbatim(margin + line);
  }

  /** Puts a dash before the next line that is no comment. */
  void dash(int indent) {
    dash = indent;
  }

  /** Writes lines that do not count until their mark, at that indent, is taken away. */
  void outcommented(int indent, Runnable lines) {
    commentedFrom = indent;
    lines.run();
    commentedFrom = -1;
  }

  private String start(int indent) {
    return dash < 0 ? margin(indent) : margin(dash) + "- " + " ".repeat(indent - dash - 2);
  }

  private String margin(int indent) {
    return commentedFrom < 0
        ? " ".repeat(indent)
        : " ".repeat(commentedFrom) + "# " + " ".repeat(indent - commentedFrom);
  }

  @Override
  public String toString() {
    return text.toString();
  }
}
