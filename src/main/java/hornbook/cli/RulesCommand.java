package hornbook.cli;

import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

/** The rule base itself. */
@Command(
    name = "rules",
    header = {
      "The rule base: what the rules are, and why.",
      "",
      "Examples:",
      "  hornbook rules list --topic nailing",
      "  hornbook rules show N003",
      ""
    })
final class RulesCommand implements Task {
  @Spec private CommandSpec spec;

  @Override
  public ExitCode run() {
    throw Failure.told(ExitCode.USAGE, spec.commandLine().getUsageMessage());
  }
}
