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
import hornbook.cli.option.OutputOption;
import hornbook.cli.option.PdfOption;
import hornbook.cli.option.UnitsOption;
import hornbook.report.classroom.CasePage;
import hornbook.study.critique.CaseKey;
import hornbook.study.exercise.BlankAnswer;
import hornbook.study.exercise.ClassList;
import hornbook.study.exercise.Exercise;
import hornbook.study.exercise.Vocabulary;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Blank answers: to fill in on the computer, in a spreadsheet, or by hand; for one or a class. */
final class ExerciseSheetCommand extends Task {
  private enum Form {
    YAML,
    CSV,
    HTML,
    PDF,
    MARKDOWN
  }

  private final ArgumentValue<List<String>> named =
      arguments.operands("CASE", "1..*", "names of cases, or case files");
  private final ArgumentValue<Form> form =
      arguments.word(
          Form.class,
          Form.YAML,
          "a file to fill in, a table for a class, or pages to write on with the key behind them:"
              + " for the browser, on paper, in Markdown",
          "--format");
  private final ArgumentValue<String> learners =
      arguments.text(
          "FILE", "names or numbers, one a line: a sheet for each, in a folder (YAML)", "--class");
  private final ArgumentValue<Boolean> noKey =
      arguments.flag("--without-key", "leave out the key behind printed sheets");
  private final UnitsOption units = new UnitsOption(arguments);
  private final TeachingCases cases = new TeachingCases(arguments);
  private final OutputOption output = new OutputOption(arguments);
  private final PdfOption pdf = new PdfOption(arguments, output);

  ExerciseSheetCommand(Surroundings surroundings) {
    super(
        surroundings,
        "sheet",
        "A blank answer to a case: to fill in, to print, or a folder for a whole class.",
        "",
        "Examples:",
        "  hornbook exercise sheet showjumper-torn-side -o mine.yaml",
        "  hornbook exercise sheet showjumper-torn-side --format pdf -o sheet.pdf",
        "  hornbook exercise sheet nail-in-the-frog foal-trim --class names.txt -o monday",
        "  hornbook exercise sheet foal-trim --format csv --class names.txt -o class.csv",
        "");
  }

  @Override
  public ExitCode run() {
    Vocabulary known = Vocabulary.of(surroundings.rules().book());
    List<Exercise> exercises =
        named.value().stream().map(name -> cases.one(name, known, surroundings)).toList();
    Map<String, String> names = names();
    pdf.only(form.value() == Form.PDF);
    if (form.value() == Form.YAML && !names.isEmpty()) {
      folder(exercises, names, known);
    } else {
      String page = sheet(exercises, names, known);
      pdf.deliver(page, form.value() == Form.PDF, surroundings);
    }
    return ExitCode.DONE;
  }

  private Map<String, String> names() {
    if (learners.value() == null) {
      return Map.of();
    }
    List<Fault> faults = new ArrayList<>();
    byte[] bytes = InputFile.read(learners.value(), null, surroundings);
    Map<String, String> names = ClassList.read(bytes, InputFile.shown(learners.value()), faults);
    if (!faults.isEmpty()) {
      FaultsFound found = new FaultsFound("a class is a text file with one name or number a line");
      found.in(faults);
      found.stopIfAny();
    }
    return names;
  }

  private String sheet(List<Exercise> exercises, Map<String, String> names, Vocabulary known) {
    boolean single = form.value() == Form.YAML || form.value() == Form.CSV;
    if (single && exercises.size() > 1) {
      throw Failure.usage(
          "one file holds the answer to one case",
          "give one case at a time, or make a folder: --class FILE --output DIR",
          "several cases to print: --format pdf");
    }
    return switch (form.value()) {
      case YAML -> BlankAnswer.yaml(exercises.get(0), null, known);
      case CSV -> BlankAnswer.csv(exercises.get(0), names.values());
      case HTML, PDF ->
          CasePage.sheetsHtml(exercises, names.values(), keys(exercises), units.units());
      case MARKDOWN ->
          CasePage.sheetsMarkdown(exercises, names.values(), keys(exercises), units.units());
    };
  }

  private List<CaseKey> keys(List<Exercise> exercises) {
    if (noKey.value()) {
      return List.of();
    }
    Advisor advisor = new Advisor(surroundings.rules().loaded());
    return exercises.stream().map(one -> CaseKey.of(one, advisor)).toList();
  }

  /** A sheet for each learner and case, the case to print, and its key. */
  private void folder(List<Exercise> exercises, Map<String, String> names, Vocabulary known) {
    if (output.toScreen()) {
      throw Failure.usage("a class needs a folder", "name it: --output DIR");
    }
    List<CaseKey> keys = keys(exercises);
    ResultFolder folder = ResultFolder.of(output.file());
    for (int at = 0; at < exercises.size(); at++) {
      Exercise one = exercises.get(at);
      ResultFolder own = folder.in(one.name());
      names.forEach(
          (file, name) -> own.file(file + ".yaml").writeNew(BlankAnswer.yaml(one, name, known)));
      String page = CasePage.sheetsHtml(List.of(one), List.of(), List.of(), units.units());
      folder.file(one.name() + ".html").write(page);
      if (!keys.isEmpty()) {
        String key = CasePage.keyHtml(one, keys.get(at), units.units());
        folder.file(one.name() + "-key.html").write(key);
      }
    }
    surroundings
        .err()
        .println(
            "Written to "
                + output.file()
                + ": "
                + names.size()
                + " sheets for each of "
                + exercises.size()
                + (exercises.size() == 1 ? " case" : " cases")
                + (keys.isEmpty() ? "" : ", and the keys"));
  }
}
