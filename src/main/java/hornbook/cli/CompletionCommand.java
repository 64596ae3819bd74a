package hornbook.cli;

import hornbook.cli.base.ExitCode;
import hornbook.cli.base.Surroundings;
import hornbook.cli.base.Task;
import java.util.stream.Collectors;
import picocli.AutoComplete;

/** Writes the script that lets the shell complete commands, options and their words. */
final class CompletionCommand extends Task {

  CompletionCommand(Surroundings surroundings) {
    super(
        surroundings,
        "completion",
        "A script that lets bash or zsh complete commands, options and words.",
        "",
        "Examples:",
        "  source <(hornbook completion)    once, or always: in ~/.bashrc or ~/.zshrc",
        "");
  }

  @Override
  public ExitCode run() {
    String script = AutoComplete.bash("hornbook", Commands.whole(surroundings));
    String bare =
        script
            .lines()
            .filter(line -> !line.strip().startsWith("#"))
            .collect(Collectors.joining("\n", "# Completes hornbook in bash and zsh.\n", "\n"));
    surroundings.print(bare);
    return ExitCode.DONE;
  }
}
