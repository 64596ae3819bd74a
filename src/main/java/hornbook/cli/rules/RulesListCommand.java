package hornbook.cli.rules;

import hornbook.assessment.tree.Nearest;
import hornbook.cli.base.ArgumentValue;
import hornbook.cli.base.ExitCode;
import hornbook.cli.base.Failure;
import hornbook.cli.base.Surroundings;
import hornbook.cli.base.Task;
import hornbook.cli.option.ListFormatOption;
import hornbook.cli.option.OutputOption;
import hornbook.cli.option.RulesOption;
import hornbook.report.rules.CatalogueJson;
import hornbook.report.rules.RuleList;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.Topic;
import java.util.List;

/** Lists the rules by topic. */
final class RulesListCommand extends Task {
  private final ArgumentValue<String> topic =
      arguments.text("TOPIC", "only the rules of this topic", "--topic");
  private final ListFormatOption format = new ListFormatOption(arguments);
  private final RulesOption rules = new RulesOption(arguments);
  private final OutputOption output = new OutputOption(arguments);

  public RulesListCommand(Surroundings surroundings) {
    super(
        surroundings,
        "list",
        "List the rules by topic.",
        "",
        "Examples:",
        "  hornbook rules list",
        "  hornbook rules list --topic nailing",
        "  hornbook rules list --format json --output rules.json",
        "");
  }

  @Override
  public ExitCode run() {
    Rulebook book = rules.of(surroundings).book();
    List<Topic> topics = topics(book);
    String list =
        format.json() ? new CatalogueJson(book).rules(topics) : RuleList.text(book, topics);
    output.deliver(list, surroundings);
    return ExitCode.DONE;
  }

  private List<Topic> topics(Rulebook book) {
    if (topic.value() == null) {
      return book.topics();
    }
    List<Topic> named =
        book.topics().stream().filter(one -> one.id().equals(topic.value())).toList();
    if (named.isEmpty()) {
      List<String> ids = book.topics().stream().map(Topic::id).toList();
      String nearest = Nearest.of(topic.value(), ids);
      throw Failure.usage(
          "there is no topic \"" + topic.value() + "\"",
          "allowed: " + String.join(", ", ids),
          nearest == null ? "all rules: hornbook rules list" : "nearest: " + nearest);
    }
    return named;
  }
}
