package hornbook.cli;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ScopeType;
import picocli.CommandLine.Spec;

/** The program without a command. */
@Command(
    name = "hornbook",
    header = {
      "Advice for a horse's foot whose wall can no longer be trusted: reasons, cautions,",
      "and when it is the vet's case.",
      "",
      "Examples:",
      "  hornbook new --limb left-fore --output tansy.yaml   a blank to fill in",
      "  hornbook assess tansy.yaml                          the advice",
      "  hornbook rules show N003                            one rule, with its grounds",
      ""
    },
    versionProvider = VersionText.class,
    footer = {
      "",
      "Decision support, not a diagnosis. Exit codes: 0 done, 1 --fail-on met, 2 usage,",
      "65 not a valid assessment, 66 no such file, 70 fault in the program, 74 cannot write."
    })
final class RootCommand implements Task {
  @Option(
      names = {"-h", "--help"},
      usageHelp = true,
      scope = ScopeType.INHERIT,
      description = "show this help")
  private boolean help;

  @Option(
      names = {"-V", "--version"},
      versionHelp = true,
      description = "show the version of the program and of its rules")
  private boolean version;

  @Spec private CommandSpec spec;

  @Override
  public ExitCode run() {
    throw Failure.told(ExitCode.USAGE, spec.commandLine().getUsageMessage());
  }
}
