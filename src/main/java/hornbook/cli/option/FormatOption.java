package hornbook.cli.option;

import hornbook.cli.base.ArgumentValue;
import hornbook.cli.base.Arguments;

/** The form of advice, job sheets and explanations. */
public final class FormatOption {
  /** The forms there are. */
  public enum Format {
    TEXT,
    JSON,
    HTML,
    PDF,
    SVG,
    MARKDOWN
  }

  private final ArgumentValue<Format> format;

  public FormatOption(Arguments arguments) {
    format =
        arguments.word(
            Format.class,
            Format.TEXT,
            "plain text, JSON for programs, a page for the browser, a page on paper, one drawing, or"
                + " Markdown",
            "--format");
  }

  public Format format() {
    return format.value();
  }
}
