package hornbook.cli;

import picocli.CommandLine.Model.CommandSpec;

/** A command: what may be given to it, and what it does then. */
interface Task {
  /** Its name, arguments and help. */
  CommandSpec spec();

  /**
   * Does it, once the arguments are read, and says how the program is to end.
   *
   * @throws Failure when it cannot be done
   */
  ExitCode run();
}
