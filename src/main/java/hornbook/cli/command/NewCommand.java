package hornbook.cli.command;

import hornbook.assessment.Assessment;
import hornbook.assessment.Limb;
import hornbook.assessment.form.BlankAssessment;
import hornbook.cli.base.ArgumentValue;
import hornbook.cli.base.ExitCode;
import hornbook.cli.base.Failure;
import hornbook.cli.base.Surroundings;
import hornbook.cli.base.Task;
import hornbook.cli.dialogue.InterviewFile;
import hornbook.cli.dialogue.InterviewTask;
import hornbook.cli.file.InputFile;
import hornbook.cli.option.OutputOption;
import hornbook.cli.option.RulesOption;
import hornbook.cli.option.UnitsOption;
import hornbook.rulebook.load.LoadedRules;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;

/** Writes a blank assessment, with a word on every field. */
public final class NewCommand extends Task {
  private static final String SCHEMA = "schema/hornbook-assessment-1.schema.json";

  private final ArgumentValue<List<Limb>> limbs =
      arguments.words(Limb.class, "the foot; may be repeated", "--limb");
  private final ArgumentValue<Boolean> ask =
      arguments.flag("--ask", "ask for each thing in turn; continues FILE if it exists");
  private final ArgumentValue<List<String>> file =
      arguments.operands("FILE", "0..1", "with --ask: the file of the interview, new or begun");
  private final UnitsOption units = new UnitsOption(arguments);
  private final RulesOption rules = new RulesOption(arguments);
  private final OutputOption output = new OutputOption(arguments);

  public NewCommand(Surroundings surroundings) {
    super(
        surroundings,
        "new",
        "A blank assessment to fill in, or an interview that fills it in.",
        "The blank says how to look at or measure each thing; with --ask it asks only",
        "what can still change the advice, the most important first, and saves every answer.",
        "",
        "Examples:",
        "  hornbook new --limb left-fore --output tansy.yaml",
        "  hornbook new --limb left-fore --limb right-fore --units inch -o tansy.yaml",
        "  hornbook new",
        "  hornbook new --ask tansy.yaml",
        "",
        "Then, when it is filled in: hornbook assess tansy.yaml",
        "");
  }

  @Override
  public ExitCode run() {
    List<Limb> each = limbs.value().stream().distinct().toList();
    if (ask.value()) {
      return interview(each);
    }
    if (!file.value().isEmpty()) {
      throw Failure.usage(
          file.value().get(0) + " is for an interview",
          "an interview: hornbook new --ask " + file.value().get(0),
          "a blank file: hornbook new --output " + file.value().get(0));
    }
    if (rules.given()) {
      throw Failure.usage(
          "a blank file is the same under all rules", "rules are for an interview: --ask");
    }
    output.deliverNew(BlankAssessment.write(each, units.units(), schema()), surroundings);
    return ExitCode.DONE;
  }

  private ExitCode interview(List<Limb> each) {
    String from = file.value().isEmpty() ? null : file.value().get(0);
    boolean begun = from != null && InterviewFile.exists(from);
    if (InputFile.STANDARD_INPUT.equals(from)) {
      throw Failure.usage("standard input is for the answers", "name a file to continue");
    }
    if (from != null && !begun && output.file() != null) {
      throw Failure.usage("there is no file " + from + " to continue", "give --output alone");
    }
    String to = output.file() == null ? from : output.file();
    Assessment known =
        begun
            ? InterviewFile.read(from, each, from.equals(to), surroundings)
            : BlankAssessment.of(each);
    LocalDate today = LocalDate.now();
    boolean ours = begun && from.equals(to);
    InterviewFile kept = new InterviewFile(surroundings, to, ours, units.units(), schema(), today);
    LoadedRules held = rules.of(surroundings).loaded();
    return new InterviewTask(surroundings, held, known, each, kept, units.units(), today).run();
  }

  /**
   * Where an editor finds what may stand in the file; for a file alone, and a program that lies
   * somewhere.
   */
  private String schema() {
    Path home = surroundings.home();
    boolean toScreen = output.toScreen() && !ask.value();
    return toScreen || home == null ? null : home.resolve(SCHEMA).toUri().toString();
  }
}
