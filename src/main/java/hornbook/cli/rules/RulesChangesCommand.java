package hornbook.cli.rules;

import hornbook.cli.base.ArgumentValue;
import hornbook.cli.base.ExitCode;
import hornbook.cli.base.Failure;
import hornbook.cli.base.Surroundings;
import hornbook.cli.base.Task;
import hornbook.cli.file.RuleFaultsFound;
import hornbook.cli.file.RulesFolder;
import hornbook.cli.option.OutputOption;
import hornbook.report.rules.VersionNotesText;
import hornbook.rulebook.VersionNote;
import hornbook.rulebook.file.RuleBaseFaulty;
import hornbook.rulebook.read.VersionNotes;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/** Tells what each version of the rule base changed. */
final class RulesChangesCommand extends Task {
  private final ArgumentValue<String> folder =
      arguments.text("DIR", "a folder of rules, instead of the program's own", "--rules");
  private final OutputOption output = new OutputOption(arguments);

  public RulesChangesCommand(Surroundings surroundings) {
    super(
        surroundings,
        "changes",
        "What each version of the rules changed, in plain words.",
        "",
        "Examples:",
        "  hornbook rules changes",
        "  hornbook rules changes --rules yard-rules",
        "");
  }

  @Override
  public ExitCode run() {
    Path rules =
        folder.value() == null ? RulesFolder.shipped(surroundings) : RulesFolder.of(folder.value());
    List<VersionNote> notes;
    try {
      notes = VersionNotes.read(rules);
    } catch (RuleBaseFaulty faulty) {
      throw RuleFaultsFound.in(rules, faulty.faults());
    } catch (IOException unreadable) {
      throw Failure.of(ExitCode.NO_INPUT, "the changes of " + rules + " cannot be read");
    }
    if (notes.isEmpty()) {
      throw Failure.of(
          ExitCode.NO_INPUT,
          "nothing is written down on the versions of " + rules,
          "write it into " + rules.resolve("changes.yaml"));
    }
    output.deliver(VersionNotesText.render(notes), surroundings);
    return ExitCode.DONE;
  }
}
