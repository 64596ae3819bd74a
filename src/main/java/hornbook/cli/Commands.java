package hornbook.cli;

import hornbook.assessment.word.Word;
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
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;

/** Every command by its name, in the order of the help. */
enum Commands {
  ASSESS(true),
  BATCH(true),
  PLAN(true),
  WHY(true),
  WHY_NOT(true),
  CONTRAST(true),
  CONFIDENCE(true),
  CRITIQUE(true),
  EXERCISE(false),
  MARK(true),
  NEW(false),
  RECORD(false),
  RULES(false),
  GLOSSARY(false),
  COMPLETION(false),
  HELP(false);

  /** Whether it cannot do without the rules, if what it is given is in order. */
  private final boolean fires;

  Commands(boolean fires) {
    this.fires = fires;
  }

  /** Whether the rules will most likely have to be loaded. */
  static boolean fireRules(String... arguments) {
    List<String> given = List.of(arguments);
    if (given.size() < 2 || given.contains("--help") || given.contains("-h")) {
      return false;
    }
    Commands command = named(given.get(0));
    return command != null && (command.fires || command == RECORD && given.get(1).equals("add"));
  }

  /** The command line that can take these arguments: a cold start lays out one command, not all. */
  static CommandLine line(Surroundings surroundings, String... arguments) {
    Commands command = arguments.length == 0 ? null : named(arguments[0]);
    return command == null ? whole(surroundings) : line(surroundings, List.of(command));
  }

  /** The command line with every command. */
  static CommandLine whole(Surroundings surroundings) {
    return line(surroundings, List.of(values()));
  }

  private static CommandLine line(Surroundings surroundings, Iterable<Commands> commands) {
    CommandLine line = new CommandLine(new RootCommand(surroundings).spec());
    for (Commands command : commands) {
      line.addSubcommand(command.word(), command.task(surroundings).spec());
    }
    line.setColorScheme(
        CommandLine.Help.defaultColorScheme(surroundings.colour() ? Ansi.ON : Ansi.OFF));
    return line;
  }

  /** The command of that name, or null. */
  private static Commands named(String word) {
    for (Commands command : values()) {
      if (command.word().equals(word)) {
        return command;
      }
    }
    return null;
  }

  private String word() {
    return Word.kebab(name());
  }

  private Task task(Surroundings surroundings) {
    return switch (this) {
      case ASSESS -> new AssessCommand(surroundings);
      case BATCH -> new BatchCommand(surroundings);
      case PLAN -> new PlanCommand(surroundings);
      case WHY -> WhyCommand.why(surroundings);
      case WHY_NOT -> WhyCommand.whyNot(surroundings);
      case CONTRAST -> new ContrastCommand(surroundings);
      case CONFIDENCE -> new ConfidenceCommand(surroundings);
      case CRITIQUE -> new CritiqueCommand(surroundings);
      case EXERCISE -> new ExerciseCommand(surroundings);
      case MARK -> new MarkCommand(surroundings);
      case NEW -> new NewCommand(surroundings);
      case RECORD -> new RecordCommand(surroundings);
      case RULES -> new RulesCommand(surroundings);
      case GLOSSARY -> new GlossaryCommand(surroundings);
      case COMPLETION -> new CompletionCommand(surroundings);
      case HELP -> new HelpCommand(surroundings);
    };
  }
}
