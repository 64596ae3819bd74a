package hornbook.cli.command;

import hornbook.advice.engine.Advisor;
import hornbook.assessment.read.ReadResult;
import hornbook.cli.base.ArgumentValue;
import hornbook.cli.base.ExitCode;
import hornbook.cli.base.Surroundings;
import hornbook.cli.base.Task;
import hornbook.cli.file.AssessedFile;
import hornbook.cli.file.Assessments;
import hornbook.cli.file.InputFile;
import hornbook.cli.option.DetailOption;
import hornbook.cli.option.FailOnOption;
import hornbook.cli.option.FormatOption;
import hornbook.cli.option.OutputOption;
import hornbook.cli.option.Rendering;
import hornbook.cli.option.RulesOption;
import hornbook.cli.option.SetOption;
import hornbook.cli.option.UnitsOption;
import hornbook.report.page.TextOptions;
import java.util.ArrayList;
import java.util.List;

/** The main job: assessments in, advice out. */
public final class AssessCommand extends Task {
  private final ArgumentValue<List<String>> files =
      arguments.operands(
          "FILE", "1..*", "an assessment or a case, in YAML or JSON; - is standard input");
  private final FormatOption format = new FormatOption(arguments);
  private final OutputOption output = new OutputOption(arguments);
  private final UnitsOption units = new UnitsOption(arguments);
  private final DetailOption detail = new DetailOption(arguments);
  private final SetOption set = new SetOption(arguments);
  private final RulesOption rules = new RulesOption(arguments);
  private final FailOnOption failOn = new FailOnOption(arguments);

  public AssessCommand(Surroundings surroundings) {
    super(
        surroundings,
        "assess",
        "Advice on a foot, from a written assessment.",
        "",
        "Examples:",
        "  hornbook assess tansy.yaml",
        "  hornbook assess --brief --units inch tansy.yaml",
        "  hornbook assess --format html --output tansy.html tansy.yaml",
        "  hornbook assess --set feet[0].signs.digitalPulse=bounding tansy.yaml",
        "  hornbook assess --fail-on today monday/*.yaml",
        "");
  }

  @Override
  public ExitCode run() {
    output.spare(files.value());
    boolean colour = output.toScreen() && surroundings.colour();
    TextOptions options =
        new TextOptions(units.units(), detail.detail(), colour, TextOptions.USUAL_WIDTH);
    List<ReadResult.Good> read = Assessments.read(files.value(), set.settings(), surroundings);
    Advisor advisor = new Advisor(rules.of(surroundings).loaded());
    List<AssessedFile> assessed = new ArrayList<>();
    for (int at = 0; at < read.size(); at++) {
      String file = InputFile.shown(files.value().get(at));
      assessed.add(new AssessedFile(file, advisor.advise(read.get(at).assessment())));
    }
    output.deliver(new Rendering(options).of(format.format(), assessed), surroundings);
    return failOn.of(assessed.stream().map(AssessedFile::advice).toList());
  }
}
