package hornbook.cli;

/** The form of advice, job sheets and explanations. */
final class FormatOption {
  /** The forms there are. */
  enum Format {
    TEXT,
    JSON,
    HTML,
    MARKDOWN
  }

  private final Value<Format> format;

  FormatOption(Arguments arguments) {
    format =
        arguments.word(
            Format.class,
            Format.TEXT,
            "plain text, JSON for programs, a page to print, or Markdown",
            "--format");
  }

  Format format() {
    return format.value();
  }
}
