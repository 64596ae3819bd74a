package hornbook.cli.rules;

import hornbook.cli.base.ArgumentValue;
import hornbook.cli.base.ExitCode;
import hornbook.cli.base.Failure;
import hornbook.cli.base.Surroundings;
import hornbook.cli.base.Task;
import hornbook.cli.file.ResultFile;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.start.RuleStarter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Map;

/** Begins a rule of one's own. */
final class RulesNewCommand extends Task {
  private final ArgumentValue<String> topic =
      arguments.operand("TOPIC", "what the rule is about, in small letters: our-yard");
  private final ArgumentValue<String> folder =
      arguments.text("DIR", "the folder of your rules, made if missing (own-rules)", "--dir");
  private final ArgumentValue<String> group =
      arguments.text("NAME", "the file of the topic it goes into, such as heart-bar", "--group");
  private final ArgumentValue<String> title =
      arguments.text("TEXT", "the title of the rule, in words of the trade", "--title");
  private final ArgumentValue<String> measure =
      arguments.text(
          "FIELD",
          "the measure the rule is about, such as toeLength; if not given, days since shoeing",
          "--on");

  public RulesNewCommand(Surroundings surroundings) {
    super(
        surroundings,
        "new",
        "Begin a rule: the rule, its text, its limit and its example case.",
        "",
        "Examples:",
        "  hornbook rules new our-yard --dir yard-rules",
        "  hornbook rules new our-yard --dir yard-rules --title \"Feet left too long\"",
        "  hornbook rules new our-yard --dir yard-rules --on toeLength",
        "  hornbook rules new nailing --dir rules --group count   in a whole rule base",
        "");
  }

  @Override
  public ExitCode run() {
    Rulebook book = surroundings.rules().book();
    if (!RuleStarter.TOPIC.matcher(topic.value()).matches()) {
      throw Failure.usage(
          "\"" + topic.value() + "\" cannot be a topic", "write small letters, such as our-yard");
    }
    if (group.value() != null && !RuleStarter.TOPIC.matcher(group.value()).matches()) {
      throw Failure.usage(
          "\"" + group.value() + "\" cannot be a file of rules", "write small letters: heart-bar");
    }
    if (title.value() != null && !title.value().matches("[^\\p{Cntrl}\\\\]{1,100}")) {
      throw Failure.usage("that cannot be a title", "write up to 100 letters on one line");
    }
    if (measure.value() != null && !RuleStarter.measures().contains(measure.value())) {
      throw Failure.usage(
          "a rule cannot begin on \"" + measure.value() + "\"",
          "allowed: " + String.join(", ", RuleStarter.measures()));
    }
    String shown = folder.value() == null ? "own-rules" : folder.value();
    try {
      Path into = Path.of(shown);
      refuseShippedTopic(book, into);
      Map<String, String> files =
          new RuleStarter(into, topic.value(), title.value(), group.value(), measure.value())
              .files(LocalDate.now());
      StringBuilder told = new StringBuilder();
      for (Map.Entry<String, String> one : files.entrySet()) {
        Path file = into.resolve(one.getKey()).normalize();
        boolean there = Files.exists(file);
        if (there && Files.readString(file).equals(one.getValue())) {
          continue;
        }
        Files.createDirectories(file.getParent());
        new ResultFile(file.toString()).write(one.getValue());
        told.append(there ? "added to " : "wrote    ").append(file).append('\n');
      }
      told.append("\nTry it:   hornbook rules try --rules ")
          .append(shown)
          .append(" --trust-rules\n");
      told.append("Check it: hornbook rules check ").append(shown).append(" --trust-rules\n");
      told.append("Use it:   hornbook assess --rules ").append(shown);
      told.append(" --trust-rules FILE\n");
      surroundings.print(told.toString());
    } catch (InvalidPathException | IOException unwritten) {
      throw Failure.of(
          ExitCode.CANNOT_WRITE, "cannot write into " + shown, "name a folder of your own");
    }
    return ExitCode.DONE;
  }

  /**
   * What is added to the shipped rules has topics of its own; a whole rule base has all of them.
   */
  private void refuseShippedTopic(Rulebook book, Path into) throws IOException {
    if (book.topics().stream().anyMatch(one -> one.id().equals(topic.value()))
        && !RuleStarter.whole(into)) {
      throw Failure.usage(
          topic.value() + " is a topic of the program's own rules",
          "name one of your own, such as our-" + topic.value());
    }
  }
}
