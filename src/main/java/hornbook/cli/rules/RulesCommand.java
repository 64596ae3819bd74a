package hornbook.cli.rules;

import hornbook.cli.base.ExitCode;
import hornbook.cli.base.Failure;
import hornbook.cli.base.Surroundings;
import hornbook.cli.base.Task;
import picocli.CommandLine;

/** The rule base itself. */
public final class RulesCommand extends Task {

  public RulesCommand(Surroundings surroundings) {
    super(
        surroundings,
        "rules",
        "The rule base: what the rules are, and why.",
        "",
        "Examples:",
        "  hornbook rules list --topic nailing",
        "  hornbook rules show N003",
        "  hornbook rules handbook --output handbook.html",
        "  hornbook rules check yard-rules --trust-rules",
        "");
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
  public ExitCode run() {
    throw Failure.told(ExitCode.USAGE, spec().commandLine().getUsageMessage());
  }
}
