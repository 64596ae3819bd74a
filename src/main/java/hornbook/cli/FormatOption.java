package hornbook.cli;

import picocli.CommandLine.Option;

/** The form of advice, job sheets and explanations. */
final class FormatOption {
  /** The forms there are. */
  enum Format {
    TEXT,
    JSON,
    HTML,
    MARKDOWN
  }

  @Option(
      names = "--format",
      paramLabel = "text|json|html|markdown",
      converter = All.class,
      completionCandidates = All.class,
      description = "plain text, JSON for programs, a page to print, or Markdown")
  private Format format = Format.TEXT;

  Format format() {
    return format;
  }

  /** The words of {@code --format}. */
  static final class All extends Words<Format> {
    All() {
      super(Format.class);
    }
  }
}
