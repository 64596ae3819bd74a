package hornbook.cli.classroom;

import hornbook.advice.Advice;
import hornbook.advice.engine.Advisor;
import hornbook.assessment.Assessment;
import hornbook.assessment.tree.Nearest;
import hornbook.cli.base.ArgumentValue;
import hornbook.cli.base.ExitCode;
import hornbook.cli.base.Failure;
import hornbook.cli.base.Surroundings;
import hornbook.cli.base.Task;
import hornbook.cli.file.RulesFolder;
import hornbook.cli.option.NumberOption;
import hornbook.cli.option.OutputOption;
import hornbook.study.exercise.ExerciseMaker;
import hornbook.study.exercise.MadeCase;
import hornbook.study.exercise.Vocabulary;
import hornbook.study.rulecase.RuleCase;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Draws a new case about a limit of a rule, or near a given case. */
final class ExerciseMakeCommand extends Task {
  private final ArgumentValue<String> rule =
      arguments.text("ID", "draw a foot close to a limit of this rule", "--rule");
  private final ArgumentValue<String> near =
      arguments.text("CASE", "draw a foot that differs from this case in one answer", "--near");
  private final NumberOption seed =
      new NumberOption(
          arguments, "--seed", 1, 0, 1_000_000_000, "another number draws another case");
  private final TeachingCases cases = new TeachingCases(arguments);
  private final OutputOption output = new OutputOption(arguments);

  ExerciseMakeCommand(Surroundings surroundings) {
    super(
        surroundings,
        "make",
        "Draw a new case close to a limit of a rule or to a case, with its answer.",
        "The same seed draws the same case.",
        "",
        "Examples:",
        "  hornbook exercise make --rule N003 --seed 7 -o made.yaml",
        "  hornbook exercise make --near showjumper-torn-side --seed 2 -o made.yaml",
        "  hornbook exercise run made.yaml",
        "");
  }

  @Override
  public ExitCode run() {
    if ((rule.value() == null) == (near.value() == null)) {
      throw Failure.usage(
          "--rule or --near is missing", "give --rule ID or --near CASE, one of the two");
    }
    Advisor advisor = new Advisor(surroundings.rules().loaded());
    Vocabulary known = Vocabulary.of(advisor.book());
    ExerciseMaker maker = new ExerciseMaker(advisor, seed.number());
    String about = rule.value() == null ? near.value() : id(known);
    Optional<ExerciseMaker.Made> made =
        rule.value() == null
            ? maker.near(cases.one(about, known, surroundings))
            : about(maker, about, known);
    if (made.isEmpty()) {
      throw Failure.of(
          ExitCode.NO_INPUT, "no case can be drawn about " + about, "try another --seed");
    }
    Assessment named = MadeCase.named(made.get().read().assessment(), maker.name());
    Advice advice = advisor.advise(named);
    String drawn = "Drawn by seed " + seed.number() + " about " + about + ".";
    List<String> changed = made.get().changed();
    output.deliverNew(
        MadeCase.yaml(made.get().title(), named, advice, drawn, changed), surroundings);
    return ExitCode.DONE;
  }

  private String id(Vocabulary known) {
    String id = rule.value().strip().toUpperCase(Locale.ROOT);
    if (!known.rules().contains(id)) {
      String nearest = Nearest.of(id, known.rules());
      throw Failure.usage(
          "there is no rule " + rule.value(),
          nearest == null ? "all rules: hornbook rules list" : "nearest: " + nearest);
    }
    return id;
  }

  private Optional<ExerciseMaker.Made> about(ExerciseMaker maker, String id, Vocabulary known) {
    Path file =
        RulesFolder.shipped(surroundings).resolveSibling("cases/rules").resolve(id + ".yaml");
    try {
      if (!Files.isRegularFile(file)) {
        return Optional.empty();
      }
      return maker.about(RuleCase.read(file), cases.all(known, surroundings));
    } catch (RuleCase.Unusable unusable) {
      return Optional.empty();
    } catch (IOException unreadable) {
      throw Failure.of(ExitCode.NO_INPUT, file + " cannot be read");
    }
  }
}
