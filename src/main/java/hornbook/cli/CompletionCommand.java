package hornbook.cli;

import hornbook.cli.base.ExitCode;
import hornbook.cli.base.Surroundings;
import hornbook.cli.base.Task;
import hornbook.cli.shell.CompletionScript;
import hornbook.cli.shell.CompletionWords;
import hornbook.study.exercise.ExerciseLibrary;
import java.io.IOException;
import java.util.List;

/** Writes the script that lets the shell complete commands, options and their words. */
final class CompletionCommand extends Task {

  CompletionCommand(Surroundings surroundings) {
    super(
        surroundings,
        "completion",
        "A script that lets bash or zsh complete commands, files, options and words.",
        "",
        "Examples:",
        "  source <(hornbook completion)    for this shell; in ~/.bashrc or ~/.zshrc for all",
        "");
  }

  @Override
  public ExitCode run() {
    surroundings.print(script(surroundings));
    return ExitCode.DONE;
  }

  static String script(Surroundings surroundings) {
    CompletionWords words = new CompletionWords(surroundings.rules().book(), cases(surroundings));
    return CompletionScript.of(Commands.whole(surroundings), words);
  }

  private static List<String> cases(Surroundings surroundings) {
    try {
      return surroundings.home() == null
          ? List.of()
          : ExerciseLibrary.names(surroundings.home().resolve("cases/exercises"));
    } catch (IOException unreadable) {
      return List.of();
    }
  }
}
