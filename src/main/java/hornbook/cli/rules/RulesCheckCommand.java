package hornbook.cli.rules;

import hornbook.cli.base.ArgumentValue;
import hornbook.cli.base.ExitCode;
import hornbook.cli.base.Failure;
import hornbook.cli.base.Progress;
import hornbook.cli.base.Surroundings;
import hornbook.cli.base.Task;
import hornbook.cli.file.RulesFolder;
import hornbook.cli.option.CasesOption;
import hornbook.cli.option.ListFormatOption;
import hornbook.cli.option.OutputOption;
import hornbook.report.rules.RulesCheckJson;
import hornbook.report.rules.RulesCheckText;
import hornbook.rulebook.file.RuleBaseFaulty;
import hornbook.rulebook.file.RuleFault;
import hornbook.rulebook.load.LoadedRules;
import hornbook.rulebook.read.RulebookReader;
import hornbook.study.rulecase.CaseLibrary;
import hornbook.study.rulecheck.FiringCheck;
import hornbook.study.rulecheck.RuleBaseCheck;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/** Looks a rule base over for everything a contributor can get wrong. */
final class RulesCheckCommand extends Task {
  /** Any would do; the same one finds the same again. */
  private static final long SEED = 1;

  private final ArgumentValue<List<String>> operand =
      arguments.operands("DIR", "0..1", "rules of your own, whole or added to those shipped");
  private final ArgumentValue<String> named = arguments.text("DIR", "the same as DIR", "--rules");
  private final ArgumentValue<Boolean> trust =
      arguments.flag(
          "--trust-rules", "you trust whoever wrote the rules of DIR: the advice rests on them");
  private final CasesOption cases = new CasesOption(arguments);
  private final ListFormatOption format = new ListFormatOption(arguments);
  private final OutputOption output = new OutputOption(arguments);

  public RulesCheckCommand(Surroundings surroundings) {
    super(
        surroundings,
        "check",
        "Check a rule base: every fault with its file, line and fix.",
        "",
        "Examples:",
        "  hornbook rules check                            those of the program",
        "  hornbook rules check yard-rules                 read, and not run",
        "  hornbook rules check yard-rules --trust-rules   with cases and contradictions",
        "",
        "Exit code 0 if there is no fault, 1 if there is one.",
        "");
  }

  @Override
  public ExitCode run() {
    String folder = folder();
    Path rules = folder == null ? RulesFolder.shipped(surroundings) : RulesFolder.existing(folder);
    String where = folder == null ? "the program" : folder;
    RuleBaseCheck check;
    try {
      check = check(rules, folder == null);
    } catch (IOException unreadable) {
      throw RulesFolder.unreadable(where);
    }
    output.deliver(
        format.json() ? RulesCheckJson.render(check, where) : RulesCheckText.render(check, where),
        surroundings);
    return check.faults().isEmpty() ? ExitCode.DONE : ExitCode.RULES_WANTING;
  }

  private String folder() {
    String first = operand.value().isEmpty() ? null : operand.value().get(0);
    if (first != null && named.value() != null) {
      throw Failure.usage("two folders: " + first + " and " + named.value(), "name one of them");
    }
    String folder = first == null ? named.value() : first;
    if (folder == null && trust.value()) {
      throw Failure.usage("--trust-rules without a folder", "give both, or neither");
    }
    return folder;
  }

  private RuleBaseCheck check(Path rules, boolean shipped) throws IOException {
    RulebookReader.Draft draft = RulebookReader.inspect(rules);
    if (!draft.faults().isEmpty()) {
      return RuleBaseCheck.faulty(draft.book(), draft.faults());
    }
    Path own = shipped ? null : rules;
    CaseLibrary library = cases.of(own, surroundings);
    if (!shipped && !trust.value()) {
      return RuleBaseCheck.untrusted(draft.book(), library);
    }
    try {
      LoadedRules loaded =
          shipped ? surroundings.rules().loaded() : RulesFolder.loaded(rules, surroundings);
      if (!loaded.book().digest().equals(draft.book().digest())) {
        return RuleBaseCheck.faulty(draft.book(), List.of(changed(rules)));
      }
      return run(loaded, library);
    } catch (RuleBaseFaulty refused) {
      return RuleBaseCheck.faulty(draft.book(), refused.faults());
    }
  }

  private RuleBaseCheck run(LoadedRules loaded, CaseLibrary library) throws IOException {
    Progress progress = Progress.of(surroundings, FiringCheck.steps(library, FiringCheck.FEET));
    try {
      FiringCheck checkup = FiringCheck.of(loaded, library, FiringCheck.FEET, SEED, progress::done);
      return RuleBaseCheck.run(loaded.book(), checkup);
    } finally {
      progress.end();
    }
  }

  /** The rules of the program lie there to be read; changing them changes nothing in it. */
  private static RuleFault changed(Path rules) {
    return new RuleFault(
        "rulebook.yaml",
        0,
        "",
        "these are not the rules the program was built from: they were changed since",
        "build the program from them, or check them by name: hornbook rules check " + rules);
  }
}
