package hornbook.report.handbook;

import hornbook.rulebook.RuleEntry;
import java.util.List;

/** Where in the handbook things are found. */
final class HandbookAnchors {
  private HandbookAnchors() {}

  static String topic(String id) {
    return "topic-" + id;
  }

  static String limit(String id) {
    return "limit-" + id;
  }

  static String source(String key) {
    return "source-" + key;
  }

  static String finding(String id) {
    return "finding-" + id;
  }

  /** A technique or a support. */
  static String subject(String id) {
    return "way-" + id;
  }

  /** The ids of rules, each leading to its rule. */
  static RichText rules(List<RuleEntry> rules) {
    return rules.isEmpty()
        ? RichText.of("none")
        : RichText.joined(", ", rules.stream().map(HandbookAnchors::rule).toList());
  }

  static RichText rule(RuleEntry rule) {
    return RichText.link(rule.id(), rule.id());
  }
}
