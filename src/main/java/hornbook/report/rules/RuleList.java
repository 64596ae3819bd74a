package hornbook.report.rules;

import hornbook.report.page.PlainPage;
import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.Topic;
import java.util.List;

/** The rules by topic, one line each. */
public final class RuleList {
  private RuleList() {}

  /** The rules of these topics as plain text. */
  public static String text(Rulebook book, List<Topic> topics) {
    PlainPage page = new PlainPage();
    int all = 0;
    for (Topic topic : topics) {
      List<RuleEntry> rules = of(book, topic);
      page.heading(topic.title() + " (" + topic.id() + ", " + counted(rules.size()) + ")");
      rules.forEach(rule -> page.hanging(2, 8, rule.id() + "  " + rule.title()));
      all += rules.size();
    }
    page.heading(counted(all) + " in all. One of them: hornbook rules show " + first(book, topics));
    return page.text();
  }

  public static List<RuleEntry> of(Rulebook book, Topic topic) {
    return book.rules().values().stream().filter(rule -> rule.topic().equals(topic.id())).toList();
  }

  private static String counted(int rules) {
    return rules + (rules == 1 ? " rule" : " rules");
  }

  private static String first(Rulebook book, List<Topic> topics) {
    return topics.stream()
        .flatMap(topic -> of(book, topic).stream())
        .findFirst()
        .map(RuleEntry::id)
        .orElse("ID");
  }
}
