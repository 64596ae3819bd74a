package hornbook.cli.base;

import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/**
 * The options and operands of one command. They are written as calls: annotations would be read by
 * reflection, which takes a cold start longer than all the rest of the command line.
 */
public final class Arguments {
  /** Read before all others: it is for the surroundings of every command. */
  public static final String NO_PAGER = "--no-pager";

  private final CommandSpec spec;

  /**
   * A command.
   *
   * @param header what it does, and examples: the first lines of its help
   */
  Arguments(Task task, String name, String... header) {
    spec = CommandSpec.wrapWithoutInspection(task).name(name);
    spec.usageMessage().header(paragraphs(header)).sortOptions(false);
    spec.addOption(
        OptionSpec.builder("-h", "--help").usageHelp(true).description("show this help").build());
    spec.addOption(
        OptionSpec.builder(NO_PAGER)
            .type(boolean.class)
            .description("write a long page all at once, without a pager")
            .build());
  }

  /**
   * Lines that run on joined to one, which is broken anew for every screen. What is set in stays,
   * and so does a line that ends a sentence: the first of them stands in the list of commands.
   */
  private static String[] paragraphs(String... header) {
    List<String> joined = new ArrayList<>();
    boolean open = false;
    for (String line : header) {
      boolean text = !line.isEmpty() && line.charAt(0) != ' ';
      if (open && text) {
        joined.set(joined.size() - 1, joined.get(joined.size() - 1) + " " + line);
      } else {
        joined.add(line);
      }
      open = text && !line.endsWith(".");
    }
    return joined.toArray(String[]::new);
  }

  CommandSpec spec() {
    return spec;
  }

  /** An option that is there or not. */
  public ArgumentValue<Boolean> flag(String name, String description) {
    ArgumentValue<Boolean> value = new ArgumentValue<>(false);
    spec.addOption(of(value, description, name).type(boolean.class).build());
    return value;
  }

  /** An option that takes text; null when it is not given. */
  public ArgumentValue<String> text(String label, String description, String... names) {
    ArgumentValue<String> value = new ArgumentValue<>(null);
    spec.addOption(
        of(value, description, names).type(String.class).arity("1").paramLabel(label).build());
    return value;
  }

  /** An option that takes text and may be given again. */
  public ArgumentValue<List<String>> texts(String label, String description, String name) {
    ArgumentValue<List<String>> value = new ArgumentValue<>(new ArrayList<>());
    spec.addOption(
        of(value, description, name)
            .type(List.class)
            .auxiliaryTypes(String.class)
            .arity("1")
            .paramLabel(label)
            .build());
    return value;
  }

  /** An option that takes one of a few words. */
  public <E extends Enum<E>> ArgumentValue<E> word(
      Class<E> type, E usual, String description, String name) {
    ArgumentValue<E> value = new ArgumentValue<>(usual);
    WordChoices<E> words = new WordChoices<>(type);
    spec.addOption(oneOf(words, of(value, description, name).type(type)));
    return value;
  }

  /** An option that takes one of a few words and may be given again. */
  public <E extends Enum<E>> ArgumentValue<List<E>> words(
      Class<E> type, String description, String name) {
    ArgumentValue<List<E>> value = new ArgumentValue<>(new ArrayList<>());
    WordChoices<E> words = new WordChoices<>(type);
    spec.addOption(
        oneOf(words, of(value, description, name).type(List.class).auxiliaryTypes(type)));
    return value;
  }

  private static OptionSpec oneOf(WordChoices<?> words, OptionSpec.Builder option) {
    return option
        .arity("1")
        .paramLabel(words.label())
        .converters(words)
        .completionCandidates(words)
        .build();
  }

  private static OptionSpec.Builder of(
      ArgumentValue<?> value, String description, String... names) {
    return OptionSpec.builder(names)
        .description(description)
        .initialValue(value.value())
        .getter(value)
        .setter(value);
  }

  /** The operands that are left, as many as {@code arity} allows: {@code 1..*}, {@code 0..1}. */
  public ArgumentValue<List<String>> operands(String label, String arity, String description) {
    ArgumentValue<List<String>> value = new ArgumentValue<>(new ArrayList<>());
    spec.addPositional(
        PositionalParamSpec.builder()
            .paramLabel(label)
            .arity(arity)
            .index(spec.positionalParameters().size() + (arity.endsWith("*") ? "..*" : ""))
            .required(!arity.startsWith("0"))
            .type(List.class)
            .auxiliaryTypes(String.class)
            .description(description)
            .initialValue(value.value())
            .getter(value)
            .setter(value)
            .build());
    return value;
  }

  /** The next operand, which has to be there. */
  public ArgumentValue<String> operand(String label, String description) {
    ArgumentValue<String> value = new ArgumentValue<>(null);
    spec.addPositional(
        PositionalParamSpec.builder()
            .paramLabel(label)
            .arity("1")
            .required(true)
            .index(Integer.toString(spec.positionalParameters().size()))
            .type(String.class)
            .description(description)
            .initialValue(value.value())
            .getter(value)
            .setter(value)
            .build());
    return value;
  }
}
