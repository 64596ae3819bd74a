package hornbook.cli;

import hornbook.cli.base.Surroundings;
import hornbook.cli.base.Task;
import hornbook.cli.classroom.CritiqueCommand;
import hornbook.cli.classroom.ExerciseCommand;
import hornbook.cli.classroom.MarkCommand;
import hornbook.cli.command.AssessCommand;
import hornbook.cli.command.BatchCommand;
import hornbook.cli.command.ConfidenceCommand;
import hornbook.cli.command.ContrastCommand;
import hornbook.cli.command.GlossaryCommand;
import hornbook.cli.command.NewCommand;
import hornbook.cli.command.PlanCommand;
import hornbook.cli.command.WhyCommand;
import hornbook.cli.record.RecordCommand;
import hornbook.cli.rules.RulesCommand;
import java.util.List;
import java.util.Set;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;

/** Every command by its name, in the order of the help. */
final class Commands {
  private static final List<String> ALL =
      List.of(
          "assess",
          "batch",
          "plan",
          "why",
          "why-not",
          "contrast",
          "confidence",
          "critique",
          "exercise",
          "mark",
          "new",
          "record",
          "rules",
          "glossary",
          "completion",
          "help");

  /** Those that cannot do without the rules, if what they are given is in order. */
  private static final Set<String> FIRING =
      Set.of(
          "assess",
          "batch",
          "plan",
          "why",
          "why-not",
          "contrast",
          "confidence",
          "critique",
          "mark");

  private Commands() {}

  /** Whether the rules will most likely have to be loaded. */
  static boolean fireRules(String... arguments) {
    List<String> given = List.of(arguments);
    return given.size() > 1
        && (FIRING.contains(given.get(0)) || given.subList(0, 2).equals(List.of("record", "add")))
        && !given.contains("--help")
        && !given.contains("-h");
  }

  /** The command line that can take these arguments: a cold start lays out one command, not all. */
  static CommandLine line(Surroundings surroundings, String... arguments) {
    String named = arguments.length == 0 ? "" : arguments[0];
    return ALL.contains(named) ? line(surroundings, List.of(named)) : whole(surroundings);
  }

  /** The command line with every command. */
  static CommandLine whole(Surroundings surroundings) {
    return line(surroundings, ALL);
  }

  private static CommandLine line(Surroundings surroundings, Iterable<String> names) {
    CommandLine line = new CommandLine(new RootCommand(surroundings).spec());
    for (String name : names) {
      line.addSubcommand(name, task(name, surroundings).spec());
    }
    line.setColorScheme(
        CommandLine.Help.defaultColorScheme(surroundings.colour() ? Ansi.ON : Ansi.OFF));
    return line;
  }

  private static Task task(String name, Surroundings surroundings) {
    return switch (name) {
      case "assess" -> new AssessCommand(surroundings);
      case "batch" -> new BatchCommand(surroundings);
      case "plan" -> new PlanCommand(surroundings);
      case "why" -> WhyCommand.why(surroundings);
      case "why-not" -> WhyCommand.whyNot(surroundings);
      case "contrast" -> new ContrastCommand(surroundings);
      case "confidence" -> new ConfidenceCommand(surroundings);
      case "critique" -> new CritiqueCommand(surroundings);
      case "exercise" -> new ExerciseCommand(surroundings);
      case "mark" -> new MarkCommand(surroundings);
      case "new" -> new NewCommand(surroundings);
      case "record" -> new RecordCommand(surroundings);
      case "rules" -> new RulesCommand(surroundings);
      case "glossary" -> new GlossaryCommand(surroundings);
      case "completion" -> new CompletionCommand(surroundings);
      case "help" -> new HelpCommand(surroundings);
      default -> throw new IllegalArgumentException(name);
    };
  }
}
