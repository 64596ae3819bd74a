package hornbook.cli.option;

import hornbook.cli.base.ArgumentValue;
import hornbook.cli.base.Arguments;

/** The form of advice, job sheets and explanations. */
public final class FormatOption {
  /** The forms there are. */
  enum Format {
    TEXT,
    JSON,
    HTML,
    MARKDOWN
  }

  private final ArgumentValue<Format> format;

  public FormatOption(Arguments arguments) {
    format =
        arguments.word(
            Format.class,
            Format.TEXT,
            "plain text, JSON for programs, a page to print, or Markdown",
            "--format");
  }

  public Format format() {
    return format.value();
  }
}
