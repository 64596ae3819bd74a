package hornbook.cli.dialogue;

import hornbook.cli.base.Surroundings;

/** Where the lines of an answer come from. */
public interface AnswerLines extends AutoCloseable {
  /** The next line; null when there is no more, or the user breaks off. */
  String next();

  @Override
  void close();

  /** Of a user at a terminal, or of whatever standard input is. */
  static AnswerLines of(Surroundings surroundings) {
    boolean terminal = surroundings.terminal() && Boolean.getBoolean("hornbook.keyboard");
    return terminal ? KeyboardLines.open(surroundings) : new PipedLines(surroundings);
  }
}
