package hornbook.cli;

import hornbook.assessment.Nearest;
import hornbook.report.CatalogueJson;
import hornbook.report.RuleList;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.Topic;
import java.util.List;

/** Lists the rules by topic. */
final class RulesListCommand extends Task {
  private final Value<String> topic =
      arguments.text("TOPIC", "only the rules of this topic", "--topic");
  private final ListFormatOption format = new ListFormatOption(arguments);
  private final RulesOption rules = new RulesOption(arguments);
  private final OutputOption output = new OutputOption(arguments);

  RulesListCommand(Surroundings surroundings) {
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
  ExitCode run() {
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
