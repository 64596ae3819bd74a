package hornbook.cli;

import hornbook.advice.Advisor;
import hornbook.report.RulesCoverageJson;
import hornbook.report.RulesCoverageText;
import hornbook.rulebook.LoadedRules;
import hornbook.study.CaseLibrary;
import hornbook.study.Coverage;
import hornbook.study.RuleCase;
import java.io.IOException;

/** Tells how much of a rule base its cases put to the test. */
final class RulesCoverageCommand extends Task {
  private final CasesOption cases = new CasesOption(arguments);
  private final Value<Boolean> full =
      arguments.flag("--full", "every rule, condition and limit, not only what is lacking");
  private final RulesOption rules = new RulesOption(arguments);
  private final ListFormatOption format = new ListFormatOption(arguments);
  private final OutputOption output = new OutputOption(arguments);

  RulesCoverageCommand(Surroundings surroundings) {
    super(
        surroundings,
        "coverage",
        "How much of the rules the cases put to the test: rules, conditions, limits.",
        "",
        "Examples:",
        "  hornbook rules coverage",
        "  hornbook rules coverage --full                  with every rule and limit",
        "  hornbook rules coverage --rules yard-rules --trust-rules",
        "  hornbook rules coverage --cases last-winter     what those cases would test",
        "",
        "Ends with 0 where nothing is left untested, and with 1 where something is.",
        "");
  }

  @Override
  ExitCode run() {
    LoadedRules loaded = rules.of(surroundings).loaded();
    CaseLibrary library = cases.sound(rules.folder(), loaded.book(), surroundings);
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
