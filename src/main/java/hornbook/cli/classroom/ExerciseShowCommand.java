package hornbook.cli.classroom;

import hornbook.cli.base.ArgumentValue;
import hornbook.cli.base.ExitCode;
import hornbook.cli.base.Surroundings;
import hornbook.cli.base.Task;
import hornbook.cli.option.OutputOption;
import hornbook.cli.option.PdfOption;
import hornbook.cli.option.UnitsOption;
import hornbook.report.classroom.CasePage;
import hornbook.study.exercise.Exercise;
import hornbook.study.exercise.Vocabulary;

/** Shows a case as a learner gets it. */
final class ExerciseShowCommand extends Task {
  private enum Form {
    TEXT,
    HTML,
    PDF,
    MARKDOWN
  }

  private final ArgumentValue<String> named =
      arguments.operand("CASE", "the name of a case, or a case file");
  private final ArgumentValue<Form> form =
      arguments.word(
          Form.class,
          Form.TEXT,
          "plain text, a page for the browser, a page on paper, or Markdown",
          "--format");
  private final UnitsOption units = new UnitsOption(arguments);
  private final TeachingCases cases = new TeachingCases(arguments);
  private final OutputOption output = new OutputOption(arguments);
  private final PdfOption pdf = new PdfOption(arguments, output);

  ExerciseShowCommand(Surroundings surroundings) {
    super(
        surroundings,
        "show",
        "Show a case: the story and all that was seen and measured, without the answer.",
        "",
        "Examples:",
        "  hornbook exercise show showjumper-torn-side",
        "  hornbook exercise show my-case.yaml --units inch",
        "");
  }

  @Override
  public ExitCode run() {
    Vocabulary known = Vocabulary.of(surroundings.rules().book());
    Exercise exercise = cases.one(named.value(), known, surroundings);
    pdf.only(form.value() == Form.PDF);
    switch (form.value()) {
      case TEXT -> output.deliver(CasePage.text(exercise, units.units()), surroundings);
      case HTML -> output.deliver(CasePage.html(exercise, units.units()), surroundings);
      case MARKDOWN -> output.deliver(CasePage.markdown(exercise, units.units()), surroundings);
      case PDF -> pdf.deliver(CasePage.html(exercise, units.units()), surroundings);
    }
    return ExitCode.DONE;
  }
}
