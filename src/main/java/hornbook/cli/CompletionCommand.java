package hornbook.cli;

import picocli.AutoComplete;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Writes the script that lets the shell complete commands, options and their words. */
@Command(
    name = "completion",
    header = {
      "A script that lets bash or zsh complete commands, options and words.",
      "",
      "Examples:",
      "  source <(hornbook completion bash)            in ~/.bashrc",
      "  source <(hornbook completion zsh)             in ~/.zshrc",
      ""
    })
final class CompletionCommand implements Task {
  /** The shells the script is for. */
  enum Shell {
    BASH,
    ZSH
  }

  @Parameters(
      arity = "0..1",
      paramLabel = "bash|zsh",
      converter = Shells.class,
      completionCandidates = Shells.class,
      description = "the shell; the script is the same")
  private Shell shell = Shell.BASH;

  private final Surroundings surroundings;

  CompletionCommand(Surroundings surroundings) {
    this.surroundings = surroundings;
  }

  @Override
  public ExitCode run() {
    surroundings.print(AutoComplete.bash("hornbook", Commands.whole(surroundings)));
    return ExitCode.DONE;
  }

  /** The words of the shell. */
  static final class Shells extends Words<Shell> {
    Shells() {
      super(Shell.class);
    }
  }
}
