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
import hornbook.report.rules.FoundRules;
import hornbook.report.rules.RuleList;
import hornbook.rulebook.GlossaryTerm;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.Topic;
import java.util.List;

/** Lists the rules by topic. */
final class RulesListCommand extends Task {
  private final ArgumentValue<List<String>> words =
      arguments.operands("WORD", "0..*", "only rules about this: quarter crack");
  private final ArgumentValue<String> topic =
      arguments.text("TOPIC", "only the rules of this topic", "--topic");
  private final ListFormatOption format = new ListFormatOption(arguments);
  private final RulesOption rules = new RulesOption(arguments);
  private final OutputOption output = new OutputOption(arguments);

  public RulesListCommand(Surroundings surroundings) {
    super(
        surroundings,
        "list",
        "List the rules by topic, or those about one thing.",
        "",
        "Examples:",
        "  hornbook rules list",
        "  hornbook rules list --topic nailing",
        "  hornbook rules list quarter crack",
        "  hornbook rules list --format json --output rules.json",
        "");
  }

  @Override
  public ExitCode run() {
    Rulebook book = rules.of(surroundings).book();
    String word = String.join(" ", words.value());
    boolean named = topic.value() == null && topic(book, word) != null;
    List<Topic> topics = named ? List.of(topic(book, word)) : topics(book);
    String list;
    if (!word.isEmpty() && !named) {
      list = speakingOf(book, topics, word);
    } else {
      list = format.json() ? new CatalogueJson(book).rules(topics) : RuleList.text(book, topics);
    }
    output.deliver(list, surroundings);
    return ExitCode.DONE;
  }

  private static Topic topic(Rulebook book, String id) {
    return book.topics().stream().filter(one -> one.id().equals(id)).findFirst().orElse(null);
  }

  private String speakingOf(Rulebook book, List<Topic> topics, String word) {
    FoundRules found = new FoundRules(book);
    return (format.json() ? found.listJson(word, topics) : found.list(word, topics))
        .orElseThrow(() -> nothing(book, word));
  }

  private Failure nothing(Rulebook book, String word) {
    String nearest = Nearest.of(word, book.glossary().stream().map(GlossaryTerm::word).toList());
    return Failure.usage(
        "no rule" + (topic.value() == null ? "" : " of this topic") + " is about \"" + word + "\"",
        nearest == null ? "all rules: hornbook rules list" : "nearest: " + nearest);
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
