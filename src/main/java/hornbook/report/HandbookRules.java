package hornbook.report;

import hornbook.report.Book.Block;
import hornbook.report.Book.Chapter;
import hornbook.report.Book.Entry;
import hornbook.report.Book.Part;
import hornbook.rulebook.Condition;
import hornbook.rulebook.Outcome;
import hornbook.rulebook.Practice;
import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.Topic;
import hornbook.rulebook.fact.Limit;
import hornbook.study.FiredCase;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** The chapters of the rules: one for each topic. */
final class HandbookRules {
  private final Rulebook book;
  private final Map<String, FiredCase> cases;
  private final Phrases phrases;
  private final RuleWords words;
  private final Uses uses;
  private final HandbookLimits limits;
  private final Citations citations;
  private final CaseWords given;

  HandbookRules(Rulebook book, Map<String, FiredCase> cases, Phrases phrases) {
    this.book = book;
    this.cases = cases;
    this.phrases = phrases;
    this.words = new RuleWords(book, phrases);
    this.uses = new Uses(book);
    this.limits = new HandbookLimits(book, phrases);
    this.citations = new Citations(book);
    this.given = new CaseWords(phrases.amounts());
  }

  List<Chapter> chapters() {
    return book.topics().stream().map(this::chapter).toList();
  }

  private Chapter chapter(Topic topic) {
    List<RuleEntry> rules = RuleList.of(book, topic);
    List<Block> blocks = new ArrayList<>();
    for (String note : notes(Practice.About.TOPIC, topic.id())) {
      blocks.add(new Book.Paragraph(Rich.strong("Here:").plus(" " + note)));
    }
    blocks.add(
        new Book.Contents(
            rules.stream()
                .map(rule -> HandbookAnchors.rule(rule).plus(" " + rule.title()))
                .toList()));
    rules.forEach(rule -> blocks.add(entry(rule)));
    return new Chapter(HandbookAnchors.topic(topic.id()), topic.title(), blocks);
  }

  private Entry entry(RuleEntry rule) {
    List<Rich> said = new ArrayList<>();
    said.add(Rich.withHoles(words.says(rule, rule.text().says())));
    if (rule.text().meanwhile() != null) {
      String meanwhile = words.says(rule, rule.text().meanwhile());
      said.add(Rich.strong("Until the vet comes:").plus(" ").plus(Rich.withHoles(meanwhile)));
    }
    List<Part> parts = new ArrayList<>();
    parts.add(new Part("Then", List.of(outcome(rule))));
    parts.add(new Part("Asks", asks(rule)));
    parts.add(new Part("Why", List.of(Rich.of(phrases.plain(rule.why())))));
    parts.add(new Part("When silent", List.of(Rich.of(phrases.plain(rule.silent())))));
    if (rule.limits().findAny().isPresent()) {
      parts.add(new Part("Limits", limits(rule)));
    }
    if (!rule.text().dissents().isEmpty()) {
      List<RuleEntry> others = rule.text().dissents().stream().map(book.rules()::get).toList();
      Rich says = Rich.of("says on purpose what another author does not: ");
      parts.add(new Part("Dissent", List.of(says.plus(HandbookAnchors.rules(others)))));
    }
    FiredCase fired = cases.get(rule.id());
    if (fired != null) {
      parts.add(new Part("Fires on", List.of(fires(rule, fired))));
      parts.add(new Part("Near-miss", List.of(Rich.of(nearMiss(fired)))));
    }
    for (String note : notes(Practice.About.RULE, rule.id())) {
      parts.add(new Part("Here", List.of(Rich.of(note))));
    }
    parts.add(new Part("Ground", List.of(ground(rule))));
    return new Entry(rule.id(), kind(rule), rule.id(), rule.title(), said, parts);
  }

  private static String kind(RuleEntry rule) {
    Outcome outcome = rule.outcome();
    if (outcome instanceof Outcome.Refers) {
      return "vet";
    }
    if (outcome instanceof Outcome.Cautions) {
      return "warns";
    }
    if (outcome instanceof Outcome.Reasons reasons) {
      return switch (reasons.bearing()) {
        case FOR -> "for";
        case AGAINST, RULES_OUT -> "against";
        case NEEDS, NEEDS_VET -> "first";
      };
    }
    return "finds";
  }

  /** What it concludes; what it finds leads to the list of findings. */
  private Rich outcome(RuleEntry rule) {
    if (rule.outcome() instanceof Outcome.Finds finds) {
      String label = book.findings().get(finds.finding()).label();
      String whole = words.outcome(rule);
      int at = whole.indexOf(label);
      return Rich.of(whole.substring(0, at))
          .plusLink(label, HandbookAnchors.finding(finds.finding()))
          .plus(whole.substring(at + label.length()) + ".");
    }
    String only =
        rule.text().techniques().isEmpty()
            ? "."
            : ", only while one of these is open: " + words.labels(rule.text().techniques()) + ".";
    return Rich.of(words.outcome(rule) + only);
  }

  private List<Rich> asks(RuleEntry rule) {
    List<Rich> asks = new ArrayList<>();
    List<String> lines = words.conditions(rule);
    int at = 0;
    for (Condition condition : rule.conditions()) {
      if (condition instanceof Condition.OfFinding found) {
        String label = book.findings().get(found.what()).label();
        asks.add(Rich.of("found: ").plusLink(label, HandbookAnchors.finding(found.what())));
        at++;
      } else if (!(condition instanceof Condition.OfLimit)) {
        asks.add(Rich.of(lines.get(at++)));
      }
    }
    return asks;
  }

  private List<Rich> limits(RuleEntry rule) {
    List<Rich> lines = new ArrayList<>();
    rule.limits()
        .distinct()
        .forEach(id -> uses.limits(id).forEach(limit -> lines.add(limits.line(limit))));
    return lines;
  }

  /** What the rule says of the foot is told where it is not word for word what stands above. */
  private Rich fires(RuleEntry rule, FiredCase fired) {
    Rich line =
        Rich.strong(phrases.plain(fired.example().title()) + ".")
            .plus(" " + Sentence.capital(given.given(fired.example().assessment())));
    if (fired.says() == null) {
      return line.plus(" Under the local practice the rule does not fire on it.");
    }
    String says = phrases.says(fired.says());
    boolean above = says.equals(words.says(rule, rule.text().says()));
    return above ? line : line.plus(" It then says: “" + says + "”");
  }

  private String nearMiss(FiredCase fired) {
    String change = Sentence.capital(given.change(fired)) + ".";
    return fired.silenced()
        ? change
        : change + " Under the local practice the rule fires all the same.";
  }

  private Rich ground(RuleEntry rule) {
    Set<String> keys = new LinkedHashSet<>(rule.text().sources());
    rule.limits().flatMap(id -> uses.limits(id).stream()).map(Limit::source).forEach(keys::add);
    keys.remove(rule.basis().word());
    List<Rich> grounds = new ArrayList<>(List.of(Rich.strong(rule.basis().word())));
    keys.forEach(key -> grounds.add(Rich.link(citations.brief(key), HandbookAnchors.source(key))));
    return Rich.joined("; ", grounds).plus(".");
  }

  private List<String> notes(Practice.About about, String id) {
    return book.practice() == null
        ? List.of()
        : book.practice().notes().stream()
            .filter(note -> note.about() == about && note.id().equals(id))
            .map(Practice.Note::says)
            .toList();
  }
}
