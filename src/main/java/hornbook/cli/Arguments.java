package hornbook.cli;

import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;

/**
 * The options and operands of one command. They are written as calls: annotations would be read by
 * reflection, which takes a cold start longer than all the rest of the command line.
 */
final class Arguments {
  private final CommandSpec spec;

  /**
   * A command.
   *
   * @param header what it does, and examples: the first lines of its help
   */
  Arguments(Task task, String name, String... header) {
    spec = CommandSpec.wrapWithoutInspection(task).name(name);
    spec.usageMessage().header(header).sortOptions(false);
    spec.addOption(
        OptionSpec.builder("-h", "--help").usageHelp(true).description("show this help").build());
  }

  CommandSpec spec() {
    return spec;
  }

  /** An option that is there or not. */
  Value<Boolean> flag(String name, String description) {
    Value<Boolean> value = new Value<>(false);
    spec.addOption(of(value, description, name).type(boolean.class).build());
    return value;
  }

  /** An option that takes text; null when it is not given. */
  Value<String> text(String label, String description, String... names) {
    Value<String> value = new Value<>(null);
    spec.addOption(
        of(value, description, names).type(String.class).arity("1").paramLabel(label).build());
    return value;
  }

  /** An option that takes text and may be given again. */
  Value<List<String>> texts(String label, String description, String name) {
    Value<List<String>> value = new Value<>(new ArrayList<>());
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
  <E extends Enum<E>> Value<E> word(Class<E> type, E usual, String description, String name) {
    Value<E> value = new Value<>(usual);
    Words<E> words = new Words<>(type);
    spec.addOption(
        of(value, description, name)
            .type(type)
            .arity("1")
            .paramLabel(words.label())
            .converters(words)
            .completionCandidates(words)
            .build());
    return value;
  }

  /** An option that takes one of a few words and may be given again. */
  <E extends Enum<E>> Value<List<E>> words(Class<E> type, String description, String name) {
    Value<List<E>> value = new Value<>(new ArrayList<>());
    Words<E> words = new Words<>(type);
    spec.addOption(
        of(value, description, name)
            .type(List.class)
            .auxiliaryTypes(type)
            .arity("1")
            .paramLabel(words.label())
            .converters(words)
            .completionCandidates(words)
            .build());
    return value;
  }

  private static OptionSpec.Builder of(Value<?> value, String description, String... names) {
    return OptionSpec.builder(names)
        .description(description)
        .initialValue(value.value())
        .getter(value)
        .setter(value);
  }

  /** The operands that are left, as many as {@code arity} allows: {@code 1..*}, {@code 0..1}. */
  Value<List<String>> operands(String label, String arity, String description) {
    Value<List<String>> value = new Value<>(new ArrayList<>());
    spec.addPositional(
        PositionalParamSpec.builder()
            .paramLabel(label)
            .arity(arity)
            .index(arity.endsWith("*") ? "0..*" : "0")
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
  Value<String> operand(String label, String description) {
    Value<String> value = new Value<>(null);
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
