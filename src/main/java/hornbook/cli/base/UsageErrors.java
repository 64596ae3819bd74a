package hornbook.cli.base;

import hornbook.assessment.tree.Nearest;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.OverwrittenOptionException;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.TypeConversionException;
import picocli.CommandLine.UnmatchedArgumentException;

/** Tells the user what is wrong with a command line, and the nearest that would be right. */
public final class UsageErrors {
  private UsageErrors() {}

  public static String told(ParameterException misused) {
    CommandSpec command = misused.getCommandLine().getCommandSpec();
    List<String> then = new ArrayList<>();
    String what = what(misused, command, then);
    then.add("help: " + command.qualifiedName() + " --help");
    return Failure.usage(what, then.toArray(String[]::new)).text();
  }

  private static String what(ParameterException misused, CommandSpec command, List<String> then) {
    if (misused instanceof UnmatchedArgumentException unmatched) {
      return unmatched(unmatched.getUnmatched().get(0), command, then);
    }
    if (misused instanceof MissingParameterException missing) {
      return missing(missing, command);
    }
    ArgSpec argument = misused.getArgSpec();
    if (misused instanceof OverwrittenOptionException twice) {
      return name(twice.getOverwritten()) + " is given twice";
    }
    if (misused.getCause() instanceof TypeConversionException refused) {
      then.addAll(List.of(refused.getMessage().split("\n")));
      return name(argument) + " cannot be " + quoted(misused.getValue());
    }
    return misused.getMessage();
  }

  private static String unmatched(String given, CommandSpec command, List<String> then) {
    List<String> known = new ArrayList<>();
    boolean option = given.startsWith("-") && given.length() > 1;
    if (option) {
      command.options().forEach(one -> known.addAll(List.of(one.names())));
    } else {
      known.addAll(command.subcommands().keySet());
    }
    String written = given.contains("=") && option ? given.substring(0, given.indexOf('=')) : given;
    String nearest = Nearest.of(written, known);
    if (nearest != null) {
      then.add("nearest: " + nearest);
    }
    if (option) {
      return "there is no option " + quoted(written);
    }
    if (command.subcommands().isEmpty()) {
      return quoted(given) + " is one argument too many";
    }
    if (command.parent() == null && isFile(given)) {
      then.add("to assess that file: hornbook assess " + given);
    }
    return "there is no command " + quoted(given);
  }

  private static String missing(MissingParameterException missing, CommandSpec command) {
    List<ArgSpec> lacking = missing.getMissing();
    if (!lacking.isEmpty() && lacking.get(0) instanceof OptionSpec option) {
      return option.longestName() + " needs " + option.paramLabel();
    }
    return command.qualifiedName()
        + " needs "
        + lacking.stream().map(ArgSpec::paramLabel).collect(Collectors.joining(" and "));
  }

  private static String name(ArgSpec argument) {
    if (argument instanceof OptionSpec option) {
      return option.longestName();
    }
    return argument instanceof PositionalParamSpec positional ? positional.paramLabel() : "it";
  }

  private static boolean isFile(String name) {
    try {
      return Files.isRegularFile(Path.of(name));
    } catch (InvalidPathException noName) {
      return false;
    }
  }

  private static String quoted(String text) {
    return '"' + text + '"';
  }
}
