package hornbook.report.handbook;

import hornbook.report.handbook.Book.Block;
import hornbook.report.handbook.Book.Chapter;
import hornbook.report.handbook.Book.Entry;
import hornbook.report.handbook.Book.Part;
import hornbook.report.rules.CaseWords;
import hornbook.report.rules.RuleList;
import hornbook.report.words.Citations;
import hornbook.report.words.CrossReferences;
import hornbook.report.words.Phrases;
import hornbook.report.words.RuleWords;
import hornbook.report.words.Sentence;
import hornbook.rulebook.Condition;
import hornbook.rulebook.Practice;
import hornbook.rulebook.RuleConclusion;
import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.Topic;
import hornbook.rulebook.fact.Limit;
import hornbook.study.rulecase.FiredCase;
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
  private final CrossReferences uses;
  private final HandbookLimits limits;
  private final Citations citations;
  private final CaseWords given;

  HandbookRules(Rulebook book, Map<String, FiredCase> cases, Phrases phrases) {
    this.book = book;
    this.cases = cases;
    this.phrases = phrases;
    this.words = new RuleWords(book, phrases);
    this.uses = new CrossReferences(book);
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
      blocks.add(new Book.Paragraph(RichText.strong("Here:").plus(" " + note)));
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
    List<RichText> said = new ArrayList<>();
    said.add(RichText.withHoles(words.says(rule, rule.text().says())));
    if (rule.text().meanwhile() != null) {
      String meanwhile = words.says(rule, rule.text().meanwhile());
      said.add(
          RichText.strong("Until the vet comes:").plus(" ").plus(RichText.withHoles(meanwhile)));
    }
    List<Part> parts = new ArrayList<>();
    parts.add(new Part("Then", List.of(outcome(rule))));
    parts.add(new Part("Applies if", asks(rule)));
    parts.add(new Part("Why", List.of(RichText.of(phrases.plain(rule.why())))));
    parts.add(new Part("When silent", List.of(RichText.of(phrases.plain(rule.silent())))));
    if (rule.limits().findAny().isPresent()) {
      parts.add(new Part("Limits", limits(rule)));
    }
    if (!rule.text().dissents().isEmpty()) {
      List<RuleEntry> others = rule.text().dissents().stream().map(book.rules()::get).toList();
      RichText says = RichText.of("here the author disagrees with: ");
      parts.add(new Part("Dissent", List.of(says.plus(HandbookAnchors.rules(others)))));
    }
    FiredCase fired = cases.get(rule.id());
    if (fired != null) {
      parts.add(new Part("Example case", List.of(fires(rule, fired))));
      parts.add(new Part("Near-miss", List.of(RichText.of(nearMiss(fired)))));
    }
    for (String note : notes(Practice.About.RULE, rule.id())) {
      parts.add(new Part("Here", List.of(RichText.of(note))));
    }
    parts.add(new Part("Basis", List.of(ground(rule))));
    return new Entry(rule.id(), kind(rule), rule.id(), rule.title(), said, parts);
  }

  private static String kind(RuleEntry rule) {
    RuleConclusion outcome = rule.outcome();
    if (outcome instanceof RuleConclusion.Refers) {
      return "vet";
    }
    if (outcome instanceof RuleConclusion.Cautions) {
      return "warns";
    }
    if (outcome instanceof RuleConclusion.Reasons reasons) {
      return switch (reasons.bearing()) {
        case FOR -> "for";
        case AGAINST, RULES_OUT -> "against";
        case NEEDS, NEEDS_VET -> "first";
      };
    }
    return "finds";
  }

  /** What it concludes; what it finds leads to the list of findings. */
  private RichText outcome(RuleEntry rule) {
    if (rule.outcome() instanceof RuleConclusion.Finds finds) {
      String label = book.findings().get(finds.finding()).label();
      String whole = words.outcome(rule);
      int at = whole.indexOf(label);
      return RichText.of(whole.substring(0, at))
          .plusLink(label, HandbookAnchors.finding(finds.finding()))
          .plus(whole.substring(at + label.length()) + ".");
    }
    String only =
        rule.text().techniques().isEmpty()
            ? "."
            : ", only while one of these is possible: "
                + words.labels(rule.text().techniques())
                + ".";
    return RichText.of(words.outcome(rule) + only);
  }

  private List<RichText> asks(RuleEntry rule) {
    List<RichText> asks = new ArrayList<>();
    List<String> lines = words.conditions(rule);
    int at = 0;
    for (Condition condition : rule.conditions()) {
      if (condition instanceof Condition.OfFinding found) {
        String label = book.findings().get(found.what()).label();
        asks.add(RichText.of("found: ").plusLink(label, HandbookAnchors.finding(found.what())));
        at++;
      } else if (!(condition instanceof Condition.OfLimit)) {
        asks.add(RichText.of(lines.get(at++)));
      }
    }
    return asks;
  }

  private List<RichText> limits(RuleEntry rule) {
    List<RichText> lines = new ArrayList<>();
    rule.limits()
        .distinct()
        .forEach(id -> uses.limits(id).forEach(limit -> lines.add(limits.line(limit))));
    return lines;
  }

  /** What the rule says of the foot is told where it is not word for word what stands above. */
  private RichText fires(RuleEntry rule, FiredCase fired) {
    RichText line =
        RichText.strong(phrases.plain(fired.example().title()) + ".")
            .plus(" " + Sentence.capital(given.given(fired.example().assessment())));
    if (fired.says() == null) {
      return line.plus(" Under the local practice the rule does not apply to it.");
    }
    String says = phrases.says(fired.says());
    boolean above = says.equals(words.says(rule, rule.text().says()));
    return above ? line : line.plus(" It then says: “" + says + "”");
  }

  private String nearMiss(FiredCase fired) {
    String change = Sentence.capital(given.change(fired)) + ".";
    return fired.silenced() ? change : change + " Under the local practice the rule still applies.";
  }

  private RichText ground(RuleEntry rule) {
    Set<String> keys = new LinkedHashSet<>(rule.text().sources());
    rule.limits().flatMap(id -> uses.limits(id).stream()).map(Limit::source).forEach(keys::add);
    String basis = uses.weakest(rule).word();
    keys.remove(basis);
    List<RichText> grounds = new ArrayList<>(List.of(RichText.strong(basis)));
    keys.forEach(
        key -> grounds.add(RichText.link(citations.brief(key), HandbookAnchors.source(key))));
    return RichText.joined("; ", grounds).plus(".");
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
