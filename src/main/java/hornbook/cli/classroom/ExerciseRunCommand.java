package hornbook.cli.classroom;

import hornbook.advice.engine.Advisor;
import hornbook.cli.base.ArgumentValue;
import hornbook.cli.base.ExitCode;
import hornbook.cli.base.Surroundings;
import hornbook.cli.base.Task;
import hornbook.cli.dialogue.AnswerLines;
import hornbook.cli.file.ResultFile;
import hornbook.cli.option.OutputOption;
import hornbook.cli.option.RulesOption;
import hornbook.cli.option.UnitsOption;
import hornbook.report.classroom.CritiquePage;
import hornbook.report.classroom.LessonText;
import hornbook.study.critique.CaseKey;
import hornbook.study.critique.Critic;
import hornbook.study.exercise.Exercise;
import hornbook.study.exercise.FilledAnswer;
import hornbook.study.exercise.Vocabulary;
import hornbook.study.lesson.Lesson;
import hornbook.study.lesson.LessonReply;
import hornbook.study.lesson.Step;

/** Works through a case in a dialogue, with a critique at its end. */
final class ExerciseRunCommand extends Task {
  private final ArgumentValue<String> named =
      arguments.operand("CASE", "the name of a case, or a case file");
  private final UnitsOption units = new UnitsOption(arguments);
  private final RulesOption rules = new RulesOption(arguments);
  private final TeachingCases cases = new TeachingCases(arguments);
  private final ArgumentValue<String> keep =
      arguments.text("FILE", "write your answer to FILE as well", "--answer");
  private final OutputOption output = new OutputOption(arguments);

  ExerciseRunCommand(Surroundings surroundings) {
    super(
        surroundings,
        "run",
        "Work through a case: look, answer, take hints, and read the critique at the end.",
        "Questions go to the screen; the critique is the result.",
        "",
        "Examples:",
        "  hornbook exercise run nail-in-the-frog",
        "  hornbook exercise run nail-in-the-frog --answer mine.yaml -o critique.txt",
        "  hornbook exercise run nail-in-the-frog < my-lines.txt",
        "");
  }

  @Override
  public ExitCode run() {
    Advisor advisor = new Advisor(rules.of(surroundings).loaded());
    Vocabulary known = Vocabulary.of(advisor.book());
    Exercise exercise = cases.one(named.value(), known, surroundings);
    CaseKey key = CaseKey.of(exercise, advisor);
    Lesson lesson = new Lesson(exercise, key, known);
    LessonText text = new LessonText(advisor.book(), units.units());
    say(text.greeting(exercise));
    try (AnswerLines lines = AnswerLines.of(surroundings)) {
      while (lesson.step().isPresent() && put(lesson, text, lines)) {
        continue;
      }
    }
    if (keep.value() != null) {
      new ResultFile(keep.value()).writeNew(FilledAnswer.yaml(lesson.answer()));
    }
    say("\n");
    output.deliver(result(lesson, text, exercise, key, advisor), surroundings);
    return ExitCode.DONE;
  }

  private String result(
      Lesson lesson, LessonText text, Exercise exercise, CaseKey key, Advisor advisor) {
    String critique =
        CritiquePage.text(
            Critic.of(key, lesson.answer()),
            exercise.title(),
            units.units(),
            new FirstChoiceFinder(exercise.read(), advisor, units.units()));
    String looked = text.notLookedAt(lesson.notLookedAt(), lesson.hints());
    return looked.isEmpty() ? critique : critique + "\n" + looked;
  }

  /** Puts one question until it is answered; false when the learner has had enough. */
  private boolean put(Lesson lesson, LessonText text, AnswerLines lines) {
    Step step = lesson.step().get();
    say(text.question(step));
    while (true) {
      String line = lines.next();
      LessonReply reply = line == null ? new LessonReply.Stop() : lesson.take(line);
      if (reply instanceof LessonReply.Stop) {
        return false;
      }
      boolean on = reply instanceof LessonReply.Back back && back.moved();
      if (reply instanceof LessonReply.Taken || on) {
        return true;
      }
      say(text.told(reply));
    }
  }

  private void say(String words) {
    surroundings.err().print(words);
    surroundings.err().flush();
  }
}
