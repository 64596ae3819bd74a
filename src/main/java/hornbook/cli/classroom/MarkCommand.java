package hornbook.cli.classroom;

import hornbook.advice.engine.Advisor;
import hornbook.assessment.tree.Fault;
import hornbook.cli.base.ArgumentValue;
import hornbook.cli.base.ExitCode;
import hornbook.cli.base.Failure;
import hornbook.cli.base.Surroundings;
import hornbook.cli.base.Task;
import hornbook.cli.file.FaultsFound;
import hornbook.cli.file.InputFile;
import hornbook.cli.file.ResultFolder;
import hornbook.cli.file.RulesFolder;
import hornbook.cli.option.OutputOption;
import hornbook.cli.option.PdfOption;
import hornbook.cli.option.RulesOption;
import hornbook.cli.option.UnitsOption;
import hornbook.report.classroom.CritiquePage;
import hornbook.report.classroom.MarksCsv;
import hornbook.report.classroom.MarksJson;
import hornbook.report.classroom.MarksPage;
import hornbook.study.critique.CaseKey;
import hornbook.study.exercise.Exercise;
import hornbook.study.exercise.Vocabulary;
import hornbook.study.marking.ClassMarks;
import hornbook.study.marking.Kappa;
import hornbook.study.marking.Marker;
import hornbook.study.marking.MarkingScheme;
import hornbook.study.marking.NextCases;
import hornbook.study.marking.OtherMarker;
import hornbook.study.marking.SchemeReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Marks the answers of a class to a case. */
public final class MarkCommand extends Task {
  private enum Form {
    TEXT,
    JSON,
    CSV,
    HTML,
    PDF,
    MARKDOWN
  }

  private final ArgumentValue<String> named =
      arguments.operand("CASE", "the name of a case, or a case file");
  private final ArgumentValue<List<String>> answers =
      arguments.operands("ANSWER", "1..*", "answers: files, folders of them, or tables (CSV)");
  private final ArgumentValue<Form> form =
      arguments.word(
          Form.class, Form.TEXT, "a page for the class, or a table of marks", "--format");
  private final ArgumentValue<String> schemeFile =
      arguments.text("FILE", "marks of your own instead of cases/marking.yaml", "--scheme");
  private final ArgumentValue<String> feedback =
      arguments.text("DIR", "write each learner's critique to a page in DIR", "--feedback");
  private final ArgumentValue<List<String>> markers =
      arguments.texts(
          "FILE", "marks of another marker (CSV), to compare; may be given twice", "--marker");
  private final RulesOption rules = new RulesOption(arguments);
  private final TeachingCases cases = new TeachingCases(arguments);
  private final UnitsOption units = new UnitsOption(arguments);
  private final OutputOption output = new OutputOption(arguments);
  private final PdfOption pdf = new PdfOption(arguments, output);

  public MarkCommand(Surroundings surroundings) {
    super(
        surroundings,
        "mark",
        "Mark answers to a case: marks for each learner, and what the class found hard.",
        "",
        "Examples:",
        "  hornbook mark showjumper-torn-side monday/showjumper-torn-side",
        "  hornbook mark showjumper-torn-side class.csv --format csv -o marks.csv",
        "  hornbook mark showjumper-torn-side answers --feedback feedback",
        "  hornbook mark showjumper-torn-side answers --marker second-marker.csv",
        "");
  }

  @Override
  public ExitCode run() {
    pdf.only(form.value() == Form.PDF);
    Advisor advisor = new Advisor(rules.of(surroundings).loaded());
    Vocabulary known = Vocabulary.of(advisor.book());
    Exercise exercise = cases.one(named.value(), known, surroundings);
    MarkingScheme scheme = scheme();
    List<OtherMarker> others = others();
    CaseKey key = CaseKey.of(exercise, advisor);
    List<ClassMarks.Row> rows =
        new AnswerFiles(exercise, known, surroundings)
            .marked(answers.value(), answer -> new Marker(scheme).mark(key, answer));
    ClassMarks marks = new ClassMarks(key, scheme, rows, null);
    marks = marks.with(agreement(others, marks));
    if (feedback.value() != null) {
      feedback(marks, exercise, advisor);
    }
    String page = page(marks, exercise, advisor, known);
    pdf.deliver(page, form.value() == Form.PDF, surroundings);
    boolean all = rows.stream().allMatch(row -> row.marks() != null);
    return all ? ExitCode.DONE : ExitCode.INVALID_INPUT;
  }

  private MarkingScheme scheme() {
    String file =
        schemeFile.value() != null
            ? schemeFile.value()
            : RulesFolder.shipped(surroundings).resolveSibling("cases/marking.yaml").toString();
    List<Fault> faults = new ArrayList<>();
    byte[] bytes = InputFile.read(file, null, surroundings);
    MarkingScheme scheme = SchemeReader.read(bytes, InputFile.shown(file), faults);
    stop(faults, "copy cases/marking.yaml and change its numbers");
    return scheme;
  }

  private static void stop(List<Fault> faults, String hint) {
    if (!faults.isEmpty()) {
      FaultsFound found = new FaultsFound(hint);
      found.in(faults);
      found.stopIfAny();
    }
  }

  private List<OtherMarker> others() {
    if (markers.value().size() > 2) {
      throw Failure.usage("--marker is given more than twice", "two markers are compared at most");
    }
    List<OtherMarker> others = new ArrayList<>();
    for (String file : markers.value()) {
      List<Fault> faults = new ArrayList<>();
      byte[] bytes = InputFile.read(file, null, surroundings);
      others.add(OtherMarker.read(bytes, InputFile.shown(file), faults));
      stop(faults, "the table to change: hornbook mark CASE ANSWER... --format csv");
    }
    return others;
  }

  private static Kappa agreement(List<OtherMarker> others, ClassMarks marks) {
    return switch (others.size()) {
      case 0 -> null;
      case 1 -> others.get(0).with(marks);
      default -> others.get(0).with(others.get(1), marks);
    };
  }

  private void feedback(ClassMarks marks, Exercise exercise, Advisor advisor) {
    ResultFolder folder = ResultFolder.of(feedback.value());
    FirstChoiceFinder firstIf = new FirstChoiceFinder(exercise.read(), advisor, units.units());
    List<String> taken = new ArrayList<>();
    for (ClassMarks.Row row : marks.rows()) {
      if (row.marks() != null) {
        String stem = row.by().toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "-");
        String name = stem;
        for (int more = 2; taken.contains(name); more++) {
          name = stem + "-" + more;
        }
        taken.add(name);
        folder
            .file(name + ".html")
            .write(
                CritiquePage.html(
                    row.marks().critique(), exercise.title(), units.units(), firstIf));
      }
    }
  }

  private String page(ClassMarks marks, Exercise exercise, Advisor advisor, Vocabulary known) {
    return switch (form.value()) {
      case JSON -> MarksJson.of(marks, next(marks, exercise, advisor, known));
      case CSV -> MarksCsv.of(marks);
      case TEXT -> MarksPage.text(marks, exercise.title(), next(marks, exercise, advisor, known));
      case HTML, PDF ->
          MarksPage.html(marks, exercise.title(), next(marks, exercise, advisor, known));
      case MARKDOWN ->
          MarksPage.markdown(marks, exercise.title(), next(marks, exercise, advisor, known));
    };
  }

  private List<NextCases.Next> next(
      ClassMarks marks, Exercise exercise, Advisor advisor, Vocabulary known) {
    return NextCases.after(
        marks, exercise, cases.all(known, surroundings), one -> CaseKey.of(one, advisor));
  }
}
