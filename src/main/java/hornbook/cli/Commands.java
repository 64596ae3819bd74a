package hornbook.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;

/** Every command by its name, in the order of the help. */
final class Commands {
  private static final Map<String, Function<Surroundings, CommandLine>> ALL = new LinkedHashMap<>();

  static {
    ALL.put("assess", with -> null);
    ALL.put("rules", Commands::rules);
    ALL.put("new", with -> null);
    ALL.put("completion", with -> new CommandLine(new CompletionCommand(with)));
  }

  private Commands() {}

  /** The command line that can take these arguments: a cold start lays out one command, not all. */
  static CommandLine line(Surroundings surroundings, String... arguments) {
    String named = arguments.length == 0 ? "" : arguments[0];
    return ALL.containsKey(named)
        ? line(surroundings, List.of(named))
        : line(surroundings, ALL.keySet()).addSubcommand("help", new CommandLine.HelpCommand());
  }

  /** The command line with every command. */
  static CommandLine whole(Surroundings surroundings) {
    return line(surroundings, ALL.keySet());
  }

  private static CommandLine line(Surroundings surroundings, Iterable<String> names) {
    CommandLine line = new CommandLine(new RootCommand());
    names.forEach(name -> line.addSubcommand(name, ALL.get(name).apply(surroundings)));
    line.setColorScheme(
        CommandLine.Help.defaultColorScheme(surroundings.colour() ? Ansi.ON : Ansi.OFF));
    return line;
  }

  private static CommandLine rules(Surroundings surroundings) {
    return new CommandLine(new RulesCommand())
        .addSubcommand("list", new RulesListCommand(surroundings))
        .addSubcommand("show", new RulesShowCommand(surroundings));
  }
}
