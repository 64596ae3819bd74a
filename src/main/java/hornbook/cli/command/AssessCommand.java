package hornbook.cli.command;

import hornbook.advice.Advice;
import hornbook.advice.engine.Advisor;
import hornbook.assessment.read.ReadResult;
import hornbook.cli.base.ArgumentValue;
import hornbook.cli.base.ExitCode;
import hornbook.cli.base.Failure;
import hornbook.cli.base.Surroundings;
import hornbook.cli.base.Task;
import hornbook.cli.file.AssessedFile;
import hornbook.cli.file.Assessments;
import hornbook.cli.file.InputFile;
import hornbook.cli.option.DetailOption;
import hornbook.cli.option.FailOnOption;
import hornbook.cli.option.FootOption;
import hornbook.cli.option.FormatOption;
import hornbook.cli.option.FormatOption.Format;
import hornbook.cli.option.OutputOption;
import hornbook.cli.option.PdfOption;
import hornbook.cli.option.PictureOption;
import hornbook.cli.option.Rendering;
import hornbook.cli.option.RulesOption;
import hornbook.cli.option.SetOption;
import hornbook.cli.option.UnitsOption;
import hornbook.cli.record.PaperOption;
import hornbook.report.drawing.Drawing;
import hornbook.report.drawing.Drawings;
import hornbook.report.drawing.Picture;
import hornbook.report.page.TextOptions;
import hornbook.report.words.Amounts;
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
  private final PictureOption picture = new PictureOption(arguments, Picture.GROUND);
  private final FootOption foot =
      new FootOption(arguments, "the foot that --format svg draws, where there are several");
  private final PdfOption pdf = new PdfOption(arguments, output);
  private final PaperOption paper = new PaperOption(arguments);

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
        "  hornbook assess --format pdf --output tansy.pdf tansy.yaml",
        "  hornbook assess --format svg --picture side --output side.svg tansy.yaml",
        "  hornbook assess --set feet[0].signs.digitalPulse=bounding tansy.yaml",
        "  hornbook assess --fail-on today monday/*.yaml",
        "  hornbook assess --for vet --format html -o letter.html tansy.yaml",
        "");
  }

  @Override
  public ExitCode run() {
    output.spare(files.value());
    if (paper.given() && files.value().size() > 1) {
      throw Failure.usage("a letter or a sheet is about one assessment", "give one file at a time");
    }
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
    deliver(options, read, assessed);
    return failOn.of(assessed.stream().map(AssessedFile::advice).toList());
  }

  private void deliver(
      TextOptions options, List<ReadResult.Good> read, List<AssessedFile> assessed) {
    Format wanted = format.format();
    picture.only(wanted == Format.SVG);
    pdf.only(wanted == Format.PDF);
    if (wanted == Format.SVG && paper.given()) {
      throw Failure.usage("a letter or a sheet is no drawing", "leave --for or --format svg out");
    }
    if (wanted == Format.SVG) {
      output.deliver(picture.of(drawings(assessed)), surroundings);
      return;
    }
    String result =
        paper.given()
            ? paper.render(read.get(0), assessed.get(0).advice(), units.units(), wanted)
            : new Rendering(options).of(wanted, assessed);
    if (wanted == Format.PDF) {
      pdf.deliver(result, surroundings);
    } else {
      output.deliver(result, surroundings);
    }
  }

  private List<Drawing> drawings(List<AssessedFile> assessed) {
    if (assessed.size() > 1) {
      throw Failure.usage("a drawing shows one foot", "give one file at a time");
    }
    Advice advice = assessed.get(0).advice();
    return Drawings.of(
        advice, advice.feet().get(foot.one(advice.assessment())), new Amounts(units.units()));
  }
}
