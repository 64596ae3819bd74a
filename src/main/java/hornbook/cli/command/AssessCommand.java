package hornbook.cli.command;

import hornbook.advice.Advice;
import hornbook.advice.engine.Advisor;
import hornbook.assessment.Assessment;
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
import hornbook.report.page.PageWidth;
import hornbook.report.page.TextOptions;
import hornbook.report.words.Amounts;
import hornbook.rulebook.fact.Urgency;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Iterator;
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
      new FootOption(arguments, "the foot that --format svg draws, if there are several");
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
        "  hornbook assess --set \"feet[0].signs.digitalPulse=bounding\" tansy.yaml",
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
        new TextOptions(units.units(), detail.detail(), colour, PageWidth.columns());
    Format wanted = format.format();
    picture.only(wanted == Format.SVG);
    pdf.only(wanted == Format.PDF);
    Rendering.refuseSeveral(wanted, files.value().size());
    if (wanted == Format.SVG && paper.given()) {
      throw Failure.usage("a letter or a sheet is no drawing", "leave --for or --format svg out");
    }
    if (wanted == Format.SVG && files.value().size() > 1) {
      throw Failure.usage("a drawing shows one foot", "give one file at a time");
    }
    List<ReadResult.Good> read = Assessments.read(files.value(), set.settings(), surroundings);
    Advised advised =
        new Advised(
            new Advisor(rules.of(surroundings).loaded()),
            read.stream().map(ReadResult.Good::assessment).toList());
    if (paper.given()) {
      String sheet = paper.render(read.get(0), advised.next().advice(), units.units(), wanted);
      pdf.deliver(sheet, wanted == Format.PDF, surroundings);
      return failOn.of(advised);
    }
    Rendering rendering = new Rendering(options);
    switch (wanted) {
      case SVG -> output.deliver(picture.of(drawings(advised.next().advice())), surroundings);
      case PDF -> pdf.deliver(rendering.page(advised.next().advice()), surroundings);
      default -> write(rendering, wanted, advised);
    }
    return failOn.of(advised);
  }

  private void write(Rendering rendering, Format wanted, Advised advised) {
    boolean several = files.value().size() > 1;
    try {
      output.pages(to -> rendering.write(wanted, advised, several, to), surroundings);
    } catch (IOException never) {
      throw new UncheckedIOException(never);
    }
  }

  private List<Drawing> drawings(Advice advice) {
    return Drawings.of(
        advice, advice.feet().get(foot.one(advice.assessment())), new Amounts(units.units()));
  }

  /** The advice on each file, made when it is asked for; remembers how urgent the worst was. */
  private final class Advised implements Iterator<AssessedFile>, FailOnOption.Found {
    private final Advisor advisor;
    private final List<Assessment> read;
    private int at;
    private Urgency worst;

    Advised(Advisor advisor, List<Assessment> read) {
      this.advisor = advisor;
      this.read = read;
    }

    @Override
    public boolean hasNext() {
      return at < read.size();
    }

    @Override
    public AssessedFile next() {
      Advice advice = advisor.advise(read.get(at));
      Urgency urgency = advice.urgency().orElse(worst);
      worst = worst == null || urgency.compareTo(worst) < 0 ? urgency : worst;
      return new AssessedFile(InputFile.shown(files.value().get(at++)), advice);
    }

    /** Of all files, those too that a reader who went away did not want to see. */
    @Override
    public Urgency mostUrgent() {
      while (hasNext()) {
        next();
      }
      return worst;
    }
  }
}
