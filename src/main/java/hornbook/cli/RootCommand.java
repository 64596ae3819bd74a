package hornbook.cli;

import hornbook.cli.base.ExitCode;
import hornbook.cli.base.Failure;
import hornbook.cli.base.Surroundings;
import hornbook.cli.base.Task;
import picocli.CommandLine.Model.OptionSpec;

/** The program without a command. */
final class RootCommand extends Task {
  RootCommand(Surroundings surroundings) {
    super(
        surroundings,
        "hornbook",
        "Advice for a horse's foot with a damaged wall: reasons, cautions, and when to",
        "call the vet.",
        "",
        "Examples:",
        "  hornbook new --limb left-fore --output tansy.yaml  a blank to fill in",
        "  hornbook assess tansy.yaml                         the advice",
        "  hornbook plan tansy.yaml --technique glue-on       the job sheet",
        "  hornbook record add tansy.yaml --chose glue-on     the daybook",
        "  hornbook rules show N003                           one rule and its sources",
        "");
    spec().versionProvider(new VersionText(surroundings));
    spec()
        .addOption(
            OptionSpec.builder("-V", "--version")
                .versionHelp(true)
                .description("show the version of the program and of its rules")
                .build());
    spec()
        .usageMessage()
        .footer(
            "",
            "Decision support, not a diagnosis. Exit codes: 0 done; 1 --fail-on met, a job"
                + " sheet refused, or a daybook or rules with faults; 2 usage; 65 not a valid"
                + " assessment; 66 no such file; 70 fault in the program; 74 cannot write.");
  }

  @Override
  public ExitCode run() {
    throw Failure.told(ExitCode.USAGE, HelpText.of(spec().commandLine()));
  }
}
