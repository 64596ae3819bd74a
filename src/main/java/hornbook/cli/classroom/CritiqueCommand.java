package hornbook.cli.classroom;

import hornbook.advice.engine.Advisor;
import hornbook.assessment.Assessment;
import hornbook.assessment.read.ReadResult;
import hornbook.assessment.read.Setting;
import hornbook.assessment.tree.Fault;
import hornbook.cli.base.ArgumentValue;
import hornbook.cli.base.ExitCode;
import hornbook.cli.base.Failure;
import hornbook.cli.base.Surroundings;
import hornbook.cli.base.Task;
import hornbook.cli.file.Assessments;
import hornbook.cli.file.FaultsFound;
import hornbook.cli.file.InputFile;
import hornbook.cli.option.OutputOption;
import hornbook.cli.option.PdfOption;
import hornbook.cli.option.RulesOption;
import hornbook.cli.option.SetOption;
import hornbook.cli.option.UnitsOption;
import hornbook.report.classroom.CritiqueJson;
import hornbook.report.classroom.CritiquePage;
import hornbook.study.critique.CaseKey;
import hornbook.study.critique.Critic;
import hornbook.study.critique.Critique;
import hornbook.study.exercise.AnswerReader;
import hornbook.study.exercise.Exercise;
import hornbook.study.exercise.LearnerAnswer;
import hornbook.study.exercise.Vocabulary;
import java.util.ArrayList;
import java.util.List;

/** A learner's own reasoning compared with the rule base, point by point. */
public final class CritiqueCommand extends Task {
  private enum Form {
    TEXT,
    JSON,
    HTML,
    PDF,
    MARKDOWN
  }

  private static final String BLANK = "a blank answer: hornbook exercise sheet CASE";

  private final ArgumentValue<String> file =
      arguments.operand("FILE", "an assessment, a case file, or the name of a case");
  private final ArgumentValue<String> answer =
      arguments.operand("ANSWER", "what you think of it; - is standard input");
  private final ArgumentValue<Form> form =
      arguments.word(
          Form.class,
          Form.TEXT,
          "plain text, JSON, a page for the browser, a page on paper, or Markdown",
          "--format");
  private final UnitsOption units = new UnitsOption(arguments);
  private final SetOption set = new SetOption(arguments);
  private final RulesOption rules = new RulesOption(arguments);
  private final TeachingCases cases = new TeachingCases(arguments);
  private final OutputOption output = new OutputOption(arguments);
  private final PdfOption pdf = new PdfOption(arguments, output);

  public CritiqueCommand(Surroundings surroundings) {
    super(
        surroundings,
        "critique",
        "Your own reasoning about a foot compared with the rule base, point by point.",
        "Danger first, then what was right, then what was missed; rules and sources named.",
        "",
        "Examples:",
        "  hornbook critique showjumper-torn-side mine.yaml   a case of the library",
        "  hornbook critique tansy.yaml mine.yaml             a foot of your own",
        "  hornbook critique tansy.yaml mine.yaml --format pdf -o critique.pdf",
        "  hornbook critique tansy.yaml mine.yaml --set feet[left-fore].lameness=3",
        "",
        "A blank answer to fill in: hornbook exercise sheet showjumper-torn-side",
        "");
  }

  @Override
  public ExitCode run() {
    pdf.only(form.value() == Form.PDF);
    output.spare(List.of(file.value(), answer.value()));
    Advisor advisor = new Advisor(rules.of(surroundings).loaded());
    Vocabulary known = Vocabulary.of(advisor.book());
    Subject about = subject(known, advisor);
    LearnerAnswer given = answer(known, about.read().assessment(), about.key().name());
    Critique critique = Critic.of(about.key(), given);
    FirstChoiceFinder firstIf = new FirstChoiceFinder(about.read(), advisor, units.units());
    String page =
        switch (form.value()) {
          case TEXT -> CritiquePage.text(critique, about.title(), units.units(), firstIf);
          case MARKDOWN -> CritiquePage.markdown(critique, about.title(), units.units(), firstIf);
          case HTML, PDF -> CritiquePage.html(critique, about.title(), units.units(), firstIf);
          case JSON -> CritiqueJson.of(critique, units.units(), firstIf);
        };
    pdf.deliver(page, form.value() == Form.PDF, surroundings);
    return ExitCode.DONE;
  }

  /** What the answer is about. */
  private record Subject(CaseKey key, ReadResult.Good read, String title) {
    static Subject of(Exercise exercise, Advisor advisor) {
      return new Subject(CaseKey.of(exercise, advisor), exercise.read(), exercise.title());
    }
  }

  /** A case that was changed for this run is a foot of one's own: its model answer is gone. */
  private Subject subject(Vocabulary known, Advisor advisor) {
    List<Setting> settings = set.settings();
    boolean named = !TeachingCases.isFile(file.value());
    if (named && settings.isEmpty()) {
      return Subject.of(cases.one(file.value(), known, surroundings), advisor);
    }
    String path = named ? cases.one(file.value(), known, surroundings).file() : file.value();
    ReadResult.Good good = Assessments.read(List.of(path), settings, surroundings).get(0);
    boolean teaching = good.caseFile().filter(one -> one.expected() != null).isPresent();
    return teaching && settings.isEmpty() && !path.equals(InputFile.STANDARD_INPUT)
        ? Subject.of(cases.one(path, known, surroundings), advisor)
        : new Subject(CaseKey.of(good.assessment(), advisor), good, null);
  }

  private LearnerAnswer answer(Vocabulary known, Assessment assessment, String name) {
    List<Fault> faults = new ArrayList<>();
    String shown = InputFile.shown(answer.value());
    byte[] bytes = InputFile.read(answer.value(), BLANK, surroundings);
    LearnerAnswer given = AnswerReader.read(bytes, shown, known, assessment.feet(), faults);
    if (!faults.isEmpty()) {
      throw stopped(faults, BLANK);
    }
    if (given.caseName() != null && name != null && !given.caseName().equals(name)) {
      faults.add(new Fault(shown, 1, 1, "case", '"' + given.caseName() + '"', name, null));
      throw stopped(faults, BLANK);
    }
    return given;
  }

  private static Failure stopped(List<Fault> faults, String hint) {
    FaultsFound found = new FaultsFound(hint);
    found.in(faults);
    try {
      found.stopIfAny();
    } catch (Failure failure) {
      return failure;
    }
    throw new IllegalStateException("no faults");
  }
}
