package hornbook.cli;

/** The form of advice, job sheets and explanations. */
final class FormatOption {
  /** The forms there are. */
  enum Format {
    TEXT,
    JSON
  }

  private final Value<Format> format;

  FormatOption(Arguments arguments) {
    format =
        arguments.word(Format.class, Format.TEXT, "plain text, or JSON for programs", "--format");
  }

  Format format() {
    return format.value();
  }
}
