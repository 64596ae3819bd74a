package hornbook.cli.record;

import hornbook.cli.base.ArgumentValue;
import hornbook.cli.base.Arguments;
import hornbook.cli.base.Failure;
import hornbook.record.Printable;

/** Sentences in the farrier's own words. */
final class WordsOption {
  private static final int LONGEST = 4000;

  private final ArgumentValue<String> because;
  private final ArgumentValue<String> done;
  private final ArgumentValue<String> by;
  private final ArgumentValue<String> outcome;

  WordsOption(Arguments arguments) {
    because =
        arguments.text("WHY", "why; needed if the choice departs from the advice", "--because");
    done = arguments.text("WHAT", "what was done, and with what", "--done");
    by = arguments.text("NAME", "who writes this", "--by");
    outcome = arguments.text("HOW", "how it went", "--outcome");
  }

  /** Each on one line, with nothing in it that steers a terminal. */
  RecordedWords words() {
    return new RecordedWords(
        said("--by", by),
        said("--because", because),
        said("--done", done),
        said("--outcome", outcome));
  }

  private static String said(String option, ArgumentValue<String> value) {
    if (value.value() == null) {
      return null;
    }
    String line = Printable.line(value.value());
    if (line.isEmpty()) {
      throw Failure.usage(option + " is empty", "write something, or leave the option out");
    }
    if (line.length() > LONGEST) {
      throw Failure.usage(
          option + " is longer than " + LONGEST + " letters", "keep the long text in a file");
    }
    return line;
  }
}
