package hornbook.cli.rules;

import hornbook.advice.engine.Advisor;
import hornbook.cli.base.ArgumentValue;
import hornbook.cli.base.ExitCode;
import hornbook.cli.base.Failure;
import hornbook.cli.base.Surroundings;
import hornbook.cli.base.Task;
import hornbook.cli.option.CasesOption;
import hornbook.cli.option.ListFormatOption;
import hornbook.cli.option.OutputOption;
import hornbook.cli.option.RulesOption;
import hornbook.report.rules.RulesCoverageJson;
import hornbook.report.rules.RulesCoverageText;
import hornbook.rulebook.load.LoadedRules;
import hornbook.study.coverage.Coverage;
import hornbook.study.rulecase.CaseLibrary;
import hornbook.study.rulecase.RuleCase;
import java.io.IOException;

/** Tells how much of a rule base its cases put to the test. */
final class RulesCoverageCommand extends Task {
  private final CasesOption cases = new CasesOption(arguments);
  private final ArgumentValue<Boolean> full =
      arguments.flag("--full", "every rule, condition and limit, not only the untested");
  private final RulesOption rules = new RulesOption(arguments);
  private final ListFormatOption format = new ListFormatOption(arguments);
  private final OutputOption output = new OutputOption(arguments);

  public RulesCoverageCommand(Surroundings surroundings) {
    super(
        surroundings,
        "coverage",
        "How much of the rules the cases test: rules, conditions, limits.",
        "",
        "Examples:",
        "  hornbook rules coverage",
        "  hornbook rules coverage --full                  with every rule and limit",
        "  hornbook rules coverage --rules yard-rules --trust-rules",
        "  hornbook rules coverage --cases last-winter     what those cases would test",
        "",
        "Exit code 0 if nothing is left untested, 1 if something is.",
        "");
  }

  @Override
  public ExitCode run() {
    LoadedRules loaded = rules.of(surroundings).loaded();
    CaseLibrary library = cases.sound(rules.folder(), surroundings);
    Coverage coverage = coverage(loaded, library);
    output.deliver(
        format.json()
            ? RulesCoverageJson.render(coverage, loaded.book())
            : RulesCoverageText.render(coverage, loaded.book(), full.value()),
        surroundings);
    return coverage.whole() ? ExitCode.DONE : ExitCode.RULES_WANTING;
  }

  private Coverage coverage(LoadedRules loaded, CaseLibrary library) {
    try {
      return Coverage.of(loaded.book(), new Advisor(loaded), library);
    } catch (RuleCase.Unusable unusable) {
      throw cases.unusable(unusable);
    } catch (IOException unreadable) {
      throw Failure.of(ExitCode.NO_INPUT, "the cases cannot be read");
    }
  }
}
