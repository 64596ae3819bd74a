package hornbook.cli.rules;

import hornbook.assessment.Assessment;
import hornbook.assessment.tree.Fault;
import hornbook.cli.base.ArgumentValue;
import hornbook.cli.base.ExitCode;
import hornbook.cli.base.Failure;
import hornbook.cli.base.Surroundings;
import hornbook.cli.base.Task;
import hornbook.cli.file.FaultsFound;
import hornbook.cli.file.RulesFolder;
import hornbook.cli.option.ListFormatOption;
import hornbook.cli.option.OutputOption;
import hornbook.cli.option.PracticeOption;
import hornbook.report.rules.RulesDiffJson;
import hornbook.report.rules.RulesDiffText;
import hornbook.rulebook.load.LoadedRules;
import hornbook.study.compare.RulesDiff;
import hornbook.study.rulecase.CaseFeet;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Tells how two rule bases differ, and whose advice changes for it. */
final class RulesDiffCommand extends Task {
  private static final String SHIPPED = "shipped";

  private final ArgumentValue<String> before =
      arguments.operand("OLD", "a folder of rules, or shipped for those of the program");
  private final ArgumentValue<String> after =
      arguments.operand("NEW", "the other rules: a folder, or shipped");
  private final ArgumentValue<String> cases =
      arguments.text("DIR", "assessments and cases of your own, run as well", "--cases");
  private final PracticeOption practice = new PracticeOption(arguments);
  private final ArgumentValue<Boolean> trust =
      arguments.flag(
          "--trust-rules", "you trust whoever wrote the rules: the advice rests on them");
  private final ListFormatOption format = new ListFormatOption(arguments);
  private final OutputOption output = new OutputOption(arguments);

  public RulesDiffCommand(Surroundings surroundings) {
    super(
        surroundings,
        "diff",
        "What differs between two rule bases, and for which cases the advice changes.",
        "",
        "Examples:",
        "  hornbook rules diff shipped yard-rules --trust-rules",
        "  hornbook rules diff old-rules shipped --trust-rules --cases last-winter",
        "  hornbook rules diff shipped shipped --practice yard.yaml",
        "");
  }

  @Override
  public ExitCode run() {
    LoadedRules old = loaded(before.value());
    LoadedRules now = practice.on(loaded(after.value()), surroundings);
    RulesDiff diff = RulesDiff.of(old, now, feet());
    output.deliver(
        format.json() ? RulesDiffJson.render(diff) : RulesDiffText.render(diff), surroundings);
    return ExitCode.DONE;
  }

  private LoadedRules loaded(String named) {
    return named.equals(SHIPPED)
        ? surroundings.rules().loaded()
        : RulesFolder.load(named, trust.value(), surroundings);
  }

  private Map<String, Assessment> feet() {
    Map<String, Assessment> feet = new LinkedHashMap<>();
    Path home = surroundings.home();
    if (home != null) {
      add(home.resolve("cases"), "cases/", feet);
    }
    for (String named : List.of(before.value(), after.value())) {
      if (!named.equals(SHIPPED)) {
        add(Path.of(named, "cases"), named + "/cases/", feet);
      }
    }
    if (cases.value() != null) {
      if (!add(RulesFolder.of(cases.value()), cases.value() + "/", feet)) {
        throw Failure.of(ExitCode.NO_INPUT, "there is no folder " + cases.value());
      }
    }
    return feet;
  }

  /** Adds the feet of a folder, if there is one. */
  private static boolean add(Path folder, String prefix, Map<String, Assessment> feet) {
    if (!Files.isDirectory(folder)) {
      return false;
    }
    List<Fault> faults = new ArrayList<>();
    try {
      CaseFeet.read(folder, faults).forEach((name, foot) -> feet.put(prefix + name, foot));
    } catch (IOException unreadable) {
      throw Failure.of(ExitCode.NO_INPUT, "the cases in " + folder + " cannot be read");
    }
    if (!faults.isEmpty()) {
      FaultsFound found = new FaultsFound();
      found.in(faults);
      found.stopIfAny();
    }
    return true;
  }
}
