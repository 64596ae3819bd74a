package hornbook.cli;

import hornbook.cli.base.Arguments;
import hornbook.cli.base.ExitCode;
import hornbook.cli.base.Failure;
import hornbook.cli.base.ProgramFault;
import hornbook.cli.base.ScreenSafe;
import hornbook.cli.base.ShippedWithProgram;
import hornbook.cli.base.Surroundings;
import hornbook.cli.base.Task;
import hornbook.cli.base.UsageErrors;
import hornbook.cli.file.InputFile;
import hornbook.cli.option.OutputOption;
import hornbook.report.page.PageWidth;
import hornbook.rulebook.compile.MissingFromRulebook;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.ParseResult;
import picocli.CommandLine.UnmatchedArgumentException;

/** The program: reads the command line, runs the command it names, and ends with its exit code. */
public final class Hornbook {
  private Hornbook() {}

  public static void main(String[] arguments) {
    ShippedWithProgram rules = new ShippedWithProgram();
    if (Commands.fireRules(arguments)) {
      rules.loadAhead();
    }
    System.exit(run(Surroundings.ofProcess(rules), arguments));
  }

  /** Runs one command; whatever goes wrong is told in plain words on standard error. */
  public static int run(Surroundings surroundings, String... arguments) {
    boolean unpaged = List.of(arguments).contains(Arguments.NO_PAGER);
    try {
      return command(unpaged ? surroundings.unpaged() : surroundings, arguments).number();
    } catch (ParameterException misused) {
      surroundings.err().print(ScreenSafe.of(UsageErrors.told(misused)));
      return ExitCode.USAGE.number();
    } catch (Failure failure) {
      surroundings.err().print(failure.text());
      return failure.code().number();
    } catch (MissingFromRulebook lacks) {
      Failure failure = Failure.usage(lacks.getMessage(), lacks.cure());
      surroundings.err().print(failure.text());
      return failure.code().number();
    } catch (Throwable fault) {
      surroundings.err().print(ProgramFault.told(fault, surroundings));
      return ExitCode.FAULT.number();
    }
  }

  /** With help asked for, the command line leaves words it does not know unsaid. */
  private static void refuseUnknown(ParseResult parsed) {
    ParseResult last = parsed;
    while (last.hasSubcommand()) {
      last = last.subcommand();
    }
    if (!last.unmatched().isEmpty()) {
      CommandLine command = last.commandSpec().commandLine();
      throw new UnmatchedArgumentException(command, last.unmatched());
    }
  }

  /** The command whose help is asked for, or null. */
  private static CommandLine helpAsked(ParseResult parsed) {
    return parsed.asCommandLineList().stream()
        .filter(CommandLine::isUsageHelpRequested)
        .findFirst()
        .orElse(null);
  }

  /** Whether the result goes to a file, which is no wider or narrower for the screen. */
  private static boolean toFile(ParseResult parsed) {
    Object file = parsed.matchedOptionValue(OutputOption.NAME, null);
    return file != null && !file.equals(InputFile.STANDARD_INPUT);
  }

  private static ExitCode command(Surroundings surroundings, String... arguments) {
    String prepared = PreparedHelp.of(surroundings, arguments);
    if (prepared != null) {
      surroundings.page(prepared);
      return ExitCode.DONE;
    }
    PageWidth.set(surroundings.screen().columns(false));
    CommandLine line = Commands.line(surroundings, arguments);
    StringWriter help = new StringWriter();
    line.setOut(new PrintWriter(help));
    line.setErr(new PrintWriter(help));
    ParseResult parsed = line.parseArgs(arguments);
    refuseUnknown(parsed);
    CommandLine asked = helpAsked(parsed);
    if (asked != null) {
      surroundings.page(HelpText.of(asked));
      return ExitCode.DONE;
    }
    if (CommandLine.executeHelpRequest(parsed) != null) {
      surroundings.page(help.toString());
      return ExitCode.DONE;
    }
    while (parsed.hasSubcommand()) {
      parsed = parsed.subcommand();
    }
    PageWidth.set(surroundings.screen().columns(toFile(parsed)));
    Object command = parsed.commandSpec().userObject();
    return ((Task) command).run();
  }
}
