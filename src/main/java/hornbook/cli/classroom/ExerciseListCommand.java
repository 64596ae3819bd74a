package hornbook.cli.classroom;

import hornbook.assessment.tree.Nearest;
import hornbook.cli.base.ArgumentValue;
import hornbook.cli.base.ExitCode;
import hornbook.cli.base.Failure;
import hornbook.cli.base.Surroundings;
import hornbook.cli.base.Task;
import hornbook.cli.option.ListFormatOption;
import hornbook.cli.option.NumberOption;
import hornbook.cli.option.OutputOption;
import hornbook.report.classroom.CaseListJson;
import hornbook.report.classroom.CaseListText;
import hornbook.rulebook.Rulebook;
import hornbook.study.exercise.Exercise;
import hornbook.study.exercise.Vocabulary;
import java.util.List;
import java.util.stream.Stream;

/** Lists the teaching cases. */
final class ExerciseListCommand extends Task {
  private final NumberOption level =
      new NumberOption(arguments, "--level", 0, 1, 3, "only cases of this level, 1 to 3");
  private final ArgumentValue<String> topic =
      arguments.text("TOPIC", "only cases that teach this topic, such as nailing", "--topic");
  private final ArgumentValue<String> technique =
      arguments.text(
          "TECHNIQUE",
          "only cases with this first choice; none for cases without one",
          "--technique");
  private final ListFormatOption format = new ListFormatOption(arguments);
  private final TeachingCases cases = new TeachingCases(arguments);
  private final OutputOption output = new OutputOption(arguments);

  ExerciseListCommand(Surroundings surroundings) {
    super(
        surroundings,
        "list",
        "The teaching cases, by level, topic or technique, and what they cover.",
        "",
        "Examples:",
        "  hornbook exercise list",
        "  hornbook exercise list --level 1 --topic referral",
        "  hornbook exercise list --technique glue-on",
        "");
  }

  @Override
  public ExitCode run() {
    Rulebook book = surroundings.rules().book();
    Vocabulary known = Vocabulary.of(book);
    check("--topic", topic.value(), known.topics());
    check("--technique", technique.value(), known.techniquesOrNone());
    List<Exercise> all = cases.all(known, surroundings);
    List<Exercise> shown = all.stream().filter(this::asked).toList();
    output.deliver(
        format.json() ? CaseListJson.of(shown) : CaseListText.of(shown, all, book), surroundings);
    return ExitCode.DONE;
  }

  private boolean asked(Exercise one) {
    Stream<String> first = one.expected().values().stream().map(foot -> foot.firstChoice());
    return (level.number() == 0 || one.level() == level.number())
        && (topic.value() == null || one.topics().contains(topic.value()))
        && (technique.value() == null || first.anyMatch(technique.value()::equals));
  }

  private static void check(String option, String word, List<String> known) {
    if (word != null && !known.contains(word)) {
      String nearest = Nearest.of(word, known);
      throw Failure.usage(
          option + " cannot be \"" + word + '"',
          "allowed: " + String.join(", ", known),
          nearest == null ? "all cases: hornbook exercise list" : "nearest: " + nearest);
    }
  }
}
