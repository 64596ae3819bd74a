package hornbook.cli.base;

import picocli.CommandLine.Model.CommandSpec;

/** A command: what may be given to it, and what it does then. */
public abstract class Task {
  public final Surroundings surroundings;
  public final Arguments arguments;

  /**
   * A command that takes nothing yet.
   *
   * @param header what it does, and examples: the first lines of its help
   */
  public Task(Surroundings surroundings, String name, String... header) {
    this.surroundings = surroundings;
    this.arguments = new Arguments(this, name, header);
  }

  /** Its name, arguments and help. */
  public final CommandSpec spec() {
    return arguments.spec();
  }

  /**
   * Does it, once the arguments are read, and says how the program is to end.
   *
   * @throws Failure when it cannot be done
   */
  public abstract ExitCode run();
}
