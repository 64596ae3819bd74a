package hornbook.cli.classroom;

import hornbook.cli.base.ExitCode;
import hornbook.cli.base.Failure;
import hornbook.cli.base.Surroundings;
import hornbook.cli.base.Task;
import picocli.CommandLine;

/** The teaching cases: to choose from, hand out, and work through. */
public final class ExerciseCommand extends Task {
  public ExerciseCommand(Surroundings surroundings) {
    super(
        surroundings,
        "exercise",
        "Teaching cases: choose one, hand it out, work through it, or have one made.",
        "",
        "Examples:",
        "  hornbook exercise list --level 1",
        "  hornbook exercise show showjumper-torn-side",
        "  hornbook exercise run showjumper-torn-side",
        "  hornbook exercise sheet showjumper-torn-side --class names.txt -o monday",
        "  hornbook exercise make --rule N003 --seed 7 -o made.yaml",
        "");
    spec().addSubcommand("list", new CommandLine(new ExerciseListCommand(surroundings).spec()));
    spec().addSubcommand("show", new CommandLine(new ExerciseShowCommand(surroundings).spec()));
    spec().addSubcommand("sheet", new CommandLine(new ExerciseSheetCommand(surroundings).spec()));
    spec().addSubcommand("run", new CommandLine(new ExerciseRunCommand(surroundings).spec()));
    spec().addSubcommand("make", new CommandLine(new ExerciseMakeCommand(surroundings).spec()));
  }

  @Override
  public ExitCode run() {
    throw Failure.told(ExitCode.USAGE, spec().commandLine().getUsageMessage());
  }
}
