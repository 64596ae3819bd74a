package hornbook.cli.rules;

import hornbook.cli.base.ExitCode;
import hornbook.cli.base.Failure;
import hornbook.cli.base.Surroundings;
import hornbook.cli.base.Task;
import hornbook.cli.file.RuleFaultsFound;
import hornbook.cli.file.RulesFolder;
import hornbook.cli.option.RulesOption;
import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.load.LoadedRules;
import hornbook.study.rulecase.OwnCases;
import hornbook.study.rulecase.RuleCase;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;

/** Runs the cases of one's own rules. */
final class RulesTryCommand extends Task {
  private final RulesOption rules = new RulesOption(arguments);

  public RulesTryCommand(Surroundings surroundings) {
    super(
        surroundings,
        "try",
        "Run the cases of your own rules: each must fire, and stay silent on its near-miss.",
        "",
        "Examples:",
        "  hornbook rules try --rules yard-rules --trust-rules",
        "");
  }

  @Override
  public ExitCode run() {
    Path folder = rules.folder();
    if (folder == null) {
      throw Failure.usage(
          "the folder of rules is missing",
          "name the folder: hornbook rules try --rules DIR --trust-rules");
    }
    LoadedRules loaded = rules.of(surroundings).loaded();
    OwnCases run;
    try {
      run = OwnCases.run(loaded, surroundings.rules().book(), RulesFolder.cases(folder));
    } catch (IOException unreadable) {
      throw Failure.of(ExitCode.NO_INPUT, "the cases in " + folder + " cannot be read");
    }
    if (!run.faults().isEmpty()) {
      throw RuleFaultsFound.in(folder, run.faults());
    }
    surroundings.print(told(run));
    return ExitCode.DONE;
  }

  private static String told(OwnCases run) {
    StringBuilder told = new StringBuilder();
    for (RuleEntry rule : run.rules()) {
      told.append(rule.id()).append("  ").append(rule.title()).append('\n');
      Optional<RuleCase> own =
          run.cases().stream().filter(one -> one.rule().equals(rule.id())).findFirst();
      own.ifPresent(
          one -> {
            told.append("      fires on its case\n");
            told.append("      silent after ").append(one.nearMiss()).append('\n');
          });
    }
    int rules = run.rules().size();
    told.append('\n').append(rules).append(rules == 1 ? " rule, " : " rules, ");
    told.append(2 * run.cases().size()).append(" cases: all as expected\n");
    return told.toString();
  }
}
