package hornbook.cli;

import hornbook.assessment.Nearest;
import hornbook.report.CatalogueJson;
import hornbook.report.RuleList;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.ShippedRules;
import hornbook.rulebook.Topic;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Lists the rules by topic. */
@Command(
    name = "list",
    header = {
      "List the rules by topic.",
      "",
      "Examples:",
      "  hornbook rules list",
      "  hornbook rules list --topic nailing",
      "  hornbook rules list --format json --output rules.json",
      ""
    })
final class RulesListCommand implements Task {
  @Option(names = "--topic", paramLabel = "TOPIC", description = "only the rules of this topic")
  private String topic;

  @Mixin private ListFormatOption format = new ListFormatOption();
  @Mixin private OutputOption output = new OutputOption();

  private final Surroundings surroundings;

  RulesListCommand(Surroundings surroundings) {
    this.surroundings = surroundings;
  }

  @Override
  public ExitCode run() {
    Rulebook book = ShippedRules.book();
    List<Topic> topics = topics(book);
    String list =
        format.json() ? new CatalogueJson(book).rules(topics) : RuleList.text(book, topics);
    output.deliver(list, surroundings);
    return ExitCode.DONE;
  }

  private List<Topic> topics(Rulebook book) {
    if (topic == null) {
      return book.topics();
    }
    List<Topic> named = book.topics().stream().filter(one -> one.id().equals(topic)).toList();
    if (named.isEmpty()) {
      List<String> ids = book.topics().stream().map(Topic::id).toList();
      String nearest = Nearest.of(topic, ids);
      throw Failure.usage(
          "there is no topic \"" + topic + "\"",
          "allowed: " + String.join(", ", ids),
          nearest == null ? "all rules: hornbook rules list" : "nearest: " + nearest);
    }
    return named;
  }
}
