package hornbook.cli.dialogue;

import hornbook.cli.base.Surroundings;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;

/** Answers out of a pipe or a file; each is told back, so that what is left can be read. */
final class PipedLines implements AnswerLines {
  private static final String PROMPT = "> ";

  private final Surroundings surroundings;
  private final BufferedReader reader;

  PipedLines(Surroundings surroundings) {
    this.surroundings = surroundings;
    this.reader =
        new BufferedReader(new InputStreamReader(surroundings.in(), StandardCharsets.UTF_8));
  }

  @Override
  public String next() {
    try {
      String line = reader.readLine();
      surroundings.err().println(line == null ? "" : PROMPT + printable(line));
      return line;
    } catch (IOException broken) {
      return null;
    }
  }

  private static String printable(String line) {
    return line.replaceAll("\\p{Cntrl}", "?");
  }

  @Override
  public void close() {
    // Standard input is not ours to close.
  }
}
