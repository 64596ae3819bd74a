package hornbook.cli;

import hornbook.cli.base.ShippedWithProgram;
import hornbook.cli.base.Surroundings;
import hornbook.cli.shell.ManualPage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import picocli.CommandLine;

/** Writes manual pages, help and the completion script into the program's folder: a build step. */
public final class ShellFiles {
  private ShellFiles() {}

  /**
   * Takes the program's folder, its version, the day of the pages, and the folder with the cases.
   */
  public static void main(String[] arguments) throws IOException {
    Path home = Path.of(arguments[0]);
    Surroundings surroundings =
        Surroundings.silent(Path.of(arguments[3]), new ShippedWithProgram());
    Path pages = Files.createDirectories(home.resolve("man/man1"));
    manual(Commands.whole(surroundings), pages, arguments[1], arguments[2].substring(0, 10));
    Files.createDirectories(home.resolve("help"));
    help(Commands.whole(surroundings), home);
    Path completion = Files.createDirectories(home.resolve("completion"));
    Files.writeString(completion.resolve("_hornbook"), CompletionCommand.script(surroundings));
  }

  private static void help(CommandLine command, Path home) throws IOException {
    String name = command.getCommandSpec().qualifiedName();
    Files.writeString(PreparedHelp.file(home, name), HelpText.of(command));
    for (CommandLine below : command.getSubcommands().values()) {
      help(below, home);
    }
  }

  private static void manual(CommandLine command, Path to, String version, String day)
      throws IOException {
    String page = ManualPage.of(command, version, day);
    Files.writeString(to.resolve(ManualPage.name(command) + ".1"), page);
    for (CommandLine below : command.getSubcommands().values()) {
      manual(below, to, version, day);
    }
  }
}
