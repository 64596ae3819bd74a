package hornbook.cli;

import hornbook.report.page.PageWidth;
import hornbook.report.page.PlainPage;
import java.util.List;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** The help of a command, as wide as the screen; on a narrow one in paragraphs, not in columns. */
final class HelpText {
  private final PlainPage page = new PlainPage();

  private HelpText() {}

  static String of(CommandLine command) {
    if (PageWidth.columns() < PageWidth.USUAL) {
      HelpText help = new HelpText();
      help.narrow(command.getCommandSpec());
      return help.page.text();
    }
    command.setUsageHelpWidth(PageWidth.columns());
    return command.getUsageMessage();
  }

  private void narrow(CommandSpec command) {
    lines(List.of(command.usageMessage().header()));
    page.hanging(0, 2, usage(command));
    for (PositionalParamSpec operand : command.positionalParameters()) {
      entry(operand.paramLabel(), operand);
    }
    for (OptionSpec option : command.options()) {
      entry(names(option), option);
    }
    if (!command.subcommands().isEmpty()) {
      page.asIs(0, "Commands:");
      command
          .subcommands()
          .forEach(
              (name, of) ->
                  page.asIs(2, name).hanging(6, 6, of.getCommandSpec().usageMessage().header()[0]));
    }
    lines(List.of(command.usageMessage().footer()));
  }

  private void lines(List<String> lines) {
    for (String line : lines) {
      String text = line.strip();
      int indent = line.indexOf(text);
      page.hanging(indent, indent == 0 ? 0 : indent + 2, text);
    }
  }

  private static String usage(CommandSpec command) {
    StringBuilder usage = new StringBuilder("Usage: ").append(command.qualifiedName());
    usage.append(" [OPTIONS]");
    if (!command.subcommands().isEmpty()) {
      usage.append(" COMMAND");
    }
    for (PositionalParamSpec operand : command.positionalParameters()) {
      boolean more = operand.arity().max() > 1;
      String name = operand.paramLabel() + (more ? "..." : "");
      usage.append(operand.required() ? " " + name : " [" + name + "]");
    }
    return usage.toString();
  }

  private static String names(OptionSpec option) {
    String value = option.arity().max() == 0 ? "" : "=" + option.paramLabel();
    return String.join(", ", option.names()) + value;
  }

  private void entry(String name, ArgSpec argument) {
    page.hanging(2, 4, name);
    for (String line : argument.description()) {
      page.hanging(6, 6, line.replace("%n", " "));
    }
  }
}
