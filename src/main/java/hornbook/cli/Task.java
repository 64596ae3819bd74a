package hornbook.cli;

/** What a command does once its arguments are read. */
interface Task {
  /**
   * Does it, and says how the program is to end.
   *
   * @throws Failure when it cannot be done
   */
  ExitCode run();
}
