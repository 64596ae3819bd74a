package hornbook.cli;

import picocli.CommandLine.Option;

/** The form of what is told of the rule base. */
final class ListFormatOption {
  /** The forms there are. */
  enum Form {
    TEXT,
    JSON
  }

  @Option(
      names = "--format",
      paramLabel = "text|json",
      converter = All.class,
      completionCandidates = All.class,
      description = "plain text for people, or JSON for programs")
  private Form form = Form.TEXT;

  boolean json() {
    return form == Form.JSON;
  }

  /** The words of {@code --format}. */
  static final class All extends Words<Form> {
    All() {
      super(Form.class);
    }
  }
}
