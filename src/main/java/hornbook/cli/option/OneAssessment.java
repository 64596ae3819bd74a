package hornbook.cli.option;

import hornbook.advice.engine.Advisor;
import hornbook.assessment.quantity.Units;
import hornbook.assessment.read.ReadResult;
import hornbook.cli.base.ArgumentValue;
import hornbook.cli.base.Arguments;
import hornbook.cli.base.Failure;
import hornbook.cli.base.Surroundings;
import hornbook.cli.file.Assessments;
import java.util.List;

/** The one assessment a command is about: how it is read, held to rules, and answered. */
public final class OneAssessment {
  private final ArgumentValue<String> file;
  private final UnitsOption units;
  private final SetOption set;
  private final RulesOption rules;
  private final OutputOption output;

  /**
   * Adds the options that go with it.
   *
   * @param file the operand that {@link #file} has added
   */
  public OneAssessment(Arguments arguments, ArgumentValue<String> file) {
    this.file = file;
    units = new UnitsOption(arguments);
    set = new SetOption(arguments);
    rules = new RulesOption(arguments);
    output = new OutputOption(arguments);
  }

  /** Adds the operand that names it. */
  public static ArgumentValue<String> file(Arguments arguments) {
    return arguments.operand(
        "FILE", "an assessment or a case, in YAML or JSON; - is standard input");
  }

  /**
   * The assessment, without a fault.
   *
   * @throws Failure with all its faults, or when the result would go in its place
   */
  public ReadResult.Good read(Surroundings surroundings) {
    List<String> files = List.of(file.value());
    output.spare(files);
    return Assessments.read(files, set.settings(), surroundings).get(0);
  }

  /** Advises by the rules asked for. */
  public Advisor advisor(Surroundings surroundings) {
    return new Advisor(rules.of(surroundings).loaded());
  }

  public Units units() {
    return units.units();
  }

  public OutputOption output() {
    return output;
  }

  public void deliver(String result, Surroundings surroundings) {
    output.deliver(result, surroundings);
  }
}
