package hornbook.cli.classroom;

import hornbook.cli.base.ArgumentValue;
import hornbook.cli.base.ExitCode;
import hornbook.cli.base.Surroundings;
import hornbook.cli.base.Task;
import hornbook.cli.option.OutputOption;
import hornbook.cli.option.UnitsOption;
import hornbook.report.classroom.CasePage;
import hornbook.study.exercise.Exercise;
import hornbook.study.exercise.Vocabulary;

/** Shows a case as a learner gets it. */
final class ExerciseShowCommand extends Task {
  private enum Form {
    TEXT,
    HTML,
    MARKDOWN
  }

  private final ArgumentValue<String> named =
      arguments.operand("CASE", "the name of a case, or a case file");
  private final ArgumentValue<Form> form =
      arguments.word(Form.class, Form.TEXT, "plain text, a page to print, or Markdown", "--format");
  private final UnitsOption units = new UnitsOption(arguments);
  private final TeachingCases cases = new TeachingCases(arguments);
  private final OutputOption output = new OutputOption(arguments);

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
    output.deliver(
        switch (form.value()) {
          case TEXT -> CasePage.text(exercise, units.units());
          case HTML -> CasePage.html(exercise, units.units());
          case MARKDOWN -> CasePage.markdown(exercise, units.units());
        },
        surroundings);
    return ExitCode.DONE;
  }
}
