package hornbook.cli;

import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;

/** The rule base itself. */
final class RulesCommand implements Task {
  private final Arguments arguments =
      new Arguments(
          this,
          "rules",
          "The rule base: what the rules are, and why.",
          "",
          "Examples:",
          "  hornbook rules list --topic nailing",
          "  hornbook rules show N003",
          "  hornbook rules handbook --output handbook.html",
          "  hornbook rules check yard-rules --trust-rules",
          "");

  RulesCommand(Surroundings surroundings) {
    spec().addSubcommand("list", new CommandLine(new RulesListCommand(surroundings).spec()));
    spec().addSubcommand("show", new CommandLine(new RulesShowCommand(surroundings).spec()));
    spec().addSubcommand("check", new CommandLine(new RulesCheckCommand(surroundings).spec()));
    spec()
        .addSubcommand("coverage", new CommandLine(new RulesCoverageCommand(surroundings).spec()));
    spec()
        .addSubcommand("handbook", new CommandLine(new RulesHandbookCommand(surroundings).spec()));
    spec().addSubcommand("changes", new CommandLine(new RulesChangesCommand(surroundings).spec()));
    spec().addSubcommand("review", new CommandLine(new RulesReviewCommand(surroundings).spec()));
    spec().addSubcommand("diff", new CommandLine(new RulesDiffCommand(surroundings).spec()));
    spec().addSubcommand("new", new CommandLine(new RulesNewCommand(surroundings).spec()));
    spec().addSubcommand("try", new CommandLine(new RulesTryCommand(surroundings).spec()));
  }

  @Override
  public CommandSpec spec() {
    return arguments.spec();
  }

  @Override
  public ExitCode run() {
    throw Failure.told(ExitCode.USAGE, spec().commandLine().getUsageMessage());
  }
}
