package hornbook.cli.dialogue;

import hornbook.cli.base.Surroundings;
import java.io.IOException;
import org.jline.reader.EndOfFileException;
import org.jline.reader.LineReader;
import org.jline.reader.LineReader.Option;
import org.jline.reader.LineReaderBuilder;
import org.jline.reader.UserInterruptException;
import org.jline.terminal.Terminal;
import org.jline.terminal.TerminalBuilder;

/** Answers typed at a terminal, with a line that can be edited before it is sent off. */
final class KeyboardLines implements AnswerLines {
  private static final String PROMPT = "> ";

  private final Terminal terminal;
  private final LineReader reader;

  private KeyboardLines(Terminal terminal) {
    this.terminal = terminal;
    this.reader =
        LineReaderBuilder.builder()
            .terminal(terminal)
            .variable(LineReader.DISABLE_HISTORY, true)
            .variable(LineReader.DISABLE_COMPLETION, true)
            .variable(LineReader.BELL_STYLE, "none")
            .option(Option.BRACKETED_PASTE, false)
            .option(Option.DISABLE_EVENT_EXPANSION, true)
            .build();
  }

  /** Takes hold of the terminal; where that cannot be, lines are read as they come. */
  static AnswerLines open(Surroundings surroundings) {
    try {
      return new KeyboardLines(
          TerminalBuilder.builder().system(true).provider("exec").dumb(true).build());
    } catch (IOException | IllegalStateException noTerminal) {
      return new PipedLines(surroundings);
    }
  }

  @Override
  public String next() {
    try {
      return reader.readLine(PROMPT);
    } catch (UserInterruptException | EndOfFileException brokenOff) {
      return null;
    }
  }

  @Override
  public void close() {
    try {
      terminal.close();
    } catch (IOException gone) {
      // The terminal went away first: nothing is left to put back.
      return;
    }
  }
}
