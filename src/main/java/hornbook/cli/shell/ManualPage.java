package hornbook.cli.shell;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import picocli.CommandLine;
import picocli.CommandLine.Model.ArgSpec;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/** The manual page of a command, in the macros of man(7). */
public final class ManualPage {
  private static final String EXAMPLES = "Examples:";

  private final CommandSpec command;
  private final StringBuilder page = new StringBuilder();

  private ManualPage(CommandSpec command) {
    this.command = command;
  }

  /** The name of a command's page, without its section: {@code hornbook-rules-show}. */
  public static String name(CommandLine command) {
    return command.getCommandSpec().qualifiedName("-");
  }

  /**
   * The page.
   *
   * @param version of the program
   * @param day of the page, year-month-day
   */
  public static String of(CommandLine command, String version, String day) {
    ManualPage page = new ManualPage(command.getCommandSpec());
    page.written(name(command), version, day);
    return page.page.toString();
  }

  private void written(String name, String version, String day) {
    List<String> header = List.of(command.usageMessage().header());
    page.append(".TH \"").append(escaped(name.toUpperCase(Locale.ROOT))).append("\" \"1\" \"");
    page.append(day).append("\" \"hornbook ").append(version).append("\" \"Hornbook\"\n");
    macro("SH", "NAME");
    String first = header.get(0);
    String told = first.endsWith(".") ? first.substring(0, first.length() - 1) : first;
    text(name + " \\- ", told);
    macro("SH", "SYNOPSIS");
    synopsis();
    macro("SH", "DESCRIPTION");
    boolean listed = header.contains(EXAMPLES);
    paragraphs(header.subList(0, listed ? header.indexOf(EXAMPLES) : header.size()));
    List<String> after =
        listed ? header.subList(header.indexOf(EXAMPLES) + 1, header.size()) : List.of();
    paragraphs(after.stream().filter(line -> !line.startsWith(" ")).toList());
    arguments();
    commands();
    List<String> examples = after.stream().filter(line -> line.startsWith(" ")).toList();
    if (!examples.isEmpty()) {
      macro("SH", "EXAMPLES");
      page.append(".nf\n");
      examples.forEach(line -> text("", line.strip()));
      page.append(".fi\n");
    }
    List<String> footer = List.of(command.usageMessage().footer());
    if (!footer.isEmpty()) {
      macro("SH", "EXIT STATUS");
      paragraphs(footer);
    }
    related();
  }

  private void synopsis() {
    page.append(".B ").append(escaped(command.qualifiedName())).append('\n');
    page.append(command.subcommands().isEmpty() ? "" : "[\\fICOMMAND\\fR]\n");
    page.append("[\\fIOPTIONS\\fR]\n");
    for (PositionalParamSpec operand : command.positionalParameters()) {
      String name = "\\fI" + escaped(operand.paramLabel()) + "\\fR";
      String more = operand.arity().max() > 1 ? " ..." : "";
      page.append(operand.required() ? name + more : "[" + name + more + "]").append('\n');
    }
  }

  private void paragraphs(List<String> lines) {
    boolean begun = false;
    for (String line : lines) {
      if (line.isEmpty()) {
        continue;
      }
      page.append(begun ? ".PP\n" : "");
      text("", line);
      begun = true;
    }
  }

  private void arguments() {
    macro("SH", "OPTIONS");
    for (PositionalParamSpec operand : command.positionalParameters()) {
      entry("\\fI" + escaped(operand.paramLabel()) + "\\fR", operand);
    }
    for (OptionSpec option : command.options()) {
      String value =
          option.arity().max() == 0 ? "" : "=\\fI" + escaped(option.paramLabel()) + "\\fR";
      String names =
          List.of(option.names()).stream()
              .map(name -> "\\fB" + escaped(name) + "\\fR")
              .collect(Collectors.joining(", "));
      entry(names + value, option);
    }
  }

  private void entry(String name, ArgSpec argument) {
    page.append(".TP\n").append(name).append('\n');
    for (String line : argument.description()) {
      text("", line.replace("%n", " "));
    }
  }

  private void commands() {
    if (!command.subcommands().isEmpty()) {
      macro("SH", "COMMANDS");
      command
          .subcommands()
          .forEach(
              (name, below) -> {
                page.append(".TP\n\\fB").append(escaped(name)).append("\\fR\n");
                text("", below.getCommandSpec().usageMessage().header()[0]);
              });
    }
  }

  private void related() {
    List<String> pages =
        command.parent() == null
            ? command.subcommands().values().stream().map(ManualPage::name).toList()
            : List.of(command.parent().qualifiedName("-"));
    if (!pages.isEmpty()) {
      macro("SH", "SEE ALSO");
      page.append(
          pages.stream()
              .map(name -> "\\fB" + escaped(name) + "\\fR(1)")
              .collect(Collectors.joining(",\n")));
      page.append('\n');
    }
  }

  private void macro(String name, String argument) {
    page.append('.').append(name).append(" \"").append(argument).append("\"\n");
  }

  private void text(String before, String line) {
    String escaped = escaped(line);
    boolean request = escaped.startsWith(".") || escaped.startsWith("'");
    page.append(before.isEmpty() ? "" : before.replace("-", "\\-").replace("\\\\-", "\\-"));
    page.append(request && before.isEmpty() ? "\\&" : "").append(escaped).append('\n');
  }

  /** A hyphen is to be copied as one; a backslash and what lies beyond ASCII have names. */
  private static String escaped(String text) {
    StringBuilder escaped = new StringBuilder();
    for (char c : text.toCharArray()) {
      switch (c) {
        case '\\' -> escaped.append("\\e");
        case '-' -> escaped.append("\\-");
        case '\u00b0' -> escaped.append("\\(de");
        default ->
            escaped.append(c > 126 ? String.format("\\[u%04X]", (int) c) : String.valueOf(c));
      }
    }
    return escaped.toString();
  }
}
