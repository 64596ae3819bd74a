package hornbook.cli;

import hornbook.assessment.tree.Nearest;
import hornbook.cli.base.ArgumentValue;
import hornbook.cli.base.ExitCode;
import hornbook.cli.base.Failure;
import hornbook.cli.base.Surroundings;
import hornbook.cli.base.Task;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine;

/** The help of a command, asked for by its name. */
final class HelpCommand extends Task {
  private final ArgumentValue<List<String>> names =
      arguments.operands("COMMAND", "0..*", "the command, such as rules show");

  HelpCommand(Surroundings surroundings) {
    super(surroundings, "help", "The help of a command, as --help gives it.");
  }

  @Override
  public ExitCode run() {
    CommandLine line = Commands.whole(surroundings);
    for (String name : names.value()) {
      List<String> known = new ArrayList<>(line.getSubcommands().keySet());
      line = line.getSubcommands().get(name);
      if (line == null) {
        String nearest = Nearest.of(name, known);
        throw Failure.usage(
            "there is no command \"" + name + "\"",
            nearest == null ? "all commands: hornbook --help" : "nearest: " + nearest);
      }
    }
    surroundings.page(HelpText.of(line));
    return ExitCode.DONE;
  }
}
