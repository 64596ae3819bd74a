package hornbook.report.handbook;

import hornbook.report.handbook.Book.Block;
import hornbook.report.handbook.Book.Chapter;
import hornbook.report.handbook.Book.Entry;
import hornbook.report.handbook.Book.Part;
import hornbook.report.handbook.Book.Row;
import hornbook.report.handbook.Book.Table;
import hornbook.report.words.Citations;
import hornbook.report.words.CrossReferences;
import hornbook.report.words.FieldNames;
import hornbook.report.words.Numbers;
import hornbook.report.words.Phrases;
import hornbook.report.words.PlainWords;
import hornbook.report.words.RuleWords;
import hornbook.report.words.Sentence;
import hornbook.rulebook.FindingKind;
import hornbook.rulebook.Instruction;
import hornbook.rulebook.NamedOption;
import hornbook.rulebook.Practice;
import hornbook.rulebook.ReadingKind;
import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.Source;
import hornbook.rulebook.fact.Bearing;
import hornbook.rulebook.fact.Limit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The chapters that list what the rule base knows beside its rules. */
final class HandbookLists {
  private final Rulebook book;
  private final CrossReferences uses;
  private final Citations citations;
  private final Phrases phrases;

  HandbookLists(Rulebook book, Phrases phrases) {
    this.book = book;
    this.phrases = phrases;
    this.uses = new CrossReferences(book);
    this.citations = new Citations(book);
  }

  /** Each technique and support with the rules that bear on it. */
  Chapter techniques() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Book.Heading("techniques-in-order", "Techniques, the least intervention first"));
    book.techniques().forEach(one -> blocks.add(subject(one)));
    blocks.add(new Book.Heading("supports", "Supports"));
    book.supports().forEach(one -> blocks.add(subject(one)));
    return new Chapter("techniques", "Technique by technique: for and against", blocks);
  }

  private Entry subject(NamedOption one) {
    List<Part> parts = new ArrayList<>();
    for (Bearing bearing : Bearing.values()) {
      List<RuleEntry> rules = uses.bearing(bearing, one.id());
      if (!rules.isEmpty()) {
        parts.add(new Part(RuleWords.heading(bearing), titles(rules)));
      }
    }
    if (book.practice() != null) {
      for (Practice.Note note : book.practice().notes()) {
        if (note.about() == Practice.About.TECHNIQUE && note.id().equals(one.id())) {
          parts.add(new Part("Here", List.of(RichText.of(note.says()))));
        }
      }
    }
    String label = Sentence.capital(one.label());
    return new Entry(HandbookAnchors.subject(one.id()), "way", label, "", List.of(), parts);
  }

  private static List<RichText> titles(List<RuleEntry> rules) {
    return rules.stream().map(rule -> HandbookAnchors.rule(rule).plus(" " + rule.title())).toList();
  }

  /** What rules find, and who builds on it. */
  Chapter findings() {
    List<Row> rows = new ArrayList<>();
    for (FindingKind finding : book.findings().values()) {
      rows.add(
          new Row(
              HandbookAnchors.finding(finding.id()),
              List.of(
                  RichText.of(finding.label()),
                  RichText.of(finding.defect() ? "yes" : "no"),
                  HandbookAnchors.rules(uses.finding(finding.id())),
                  HandbookAnchors.rules(uses.buildingOn(finding.id())))));
    }
    List<String> head = List.of("Finding", "Defect", "Found by", "Built on by");
    return new Chapter(
        "findings",
        "What the rules find",
        List.of(
            new Book.Paragraph(
                RichText.of(
                    "A finding gives what was seen or measured its name, and other rules build on"
                        + " it. The technique chosen has to deal with every defect.")),
            new Table("Findings", head, rows)));
  }

  /** The numbers worked out from what was measured. */
  Chapter readings() {
    List<Row> rows = new ArrayList<>();
    for (ReadingKind kind : ReadingKind.values()) {
      List<String> fields = kind.fields().stream().map(HandbookLists::field).distinct().toList();
      rows.add(
          new Row(
              null, List.of(RichText.of(kind.label()), RichText.of(String.join(", ", fields)))));
    }
    return new Chapter(
        "readings",
        "What the program works out",
        List.of(
            new Book.Paragraph(
                RichText.of(
                    "Numbers that rules use and no tape or gauge shows. Each is worked out only"
                        + " if everything it is worked out from was measured.")),
            new Table("Readings", List.of("Number", "Worked out from"), rows)));
  }

  private static String field(String path) {
    String own = path.substring(path.indexOf('.') + 1);
    String name = FieldNames.of(path.startsWith("horse.") ? path : "feet[0]." + own);
    return path.startsWith("pair.") ? name + " of the other foot of the pair" : name;
  }

  /** The sentences of the job sheets, by their part of the sheet. */
  Chapter sheets() {
    Map<String, List<Row>> sections = new LinkedHashMap<>();
    for (Instruction one : book.instructions().values()) {
      String section = one.id().substring(0, one.id().indexOf('.'));
      sections
          .computeIfAbsent(section, key -> new ArrayList<>())
          .add(
              new Row(
                  null,
                  List.of(
                      RichText.withHoles(phrases.plain(one.says())),
                      RichText.of(one.basis().word()),
                      sources(one.sources()))));
    }
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        new Book.Paragraph(
            RichText.of(
                "What a job sheet tells the farrier to do, sentence by sentence. What stands in"
                    + " italics is filled in for the foot.")));
    List<String> head = List.of("Says", "Basis", "From");
    sections.forEach(
        (section, rows) ->
            blocks.add(new Table(Sentence.capital(PlainWords.of(section)), head, rows)));
    return new Chapter("sheets", "What the job sheets say", blocks);
  }

  private RichText sources(Collection<String> keys) {
    return RichText.joined(
        "; ",
        keys.stream()
            .map(key -> RichText.link(citations.brief(key), HandbookAnchors.source(key)))
            .toList());
  }

  /** Every work, and what rests on it. */
  Chapter sources() {
    List<Block> blocks = new ArrayList<>();
    for (Source source : book.sources().values()) {
      List<Part> parts = new ArrayList<>();
      limits(parts, "Limits from it", uses.limitsFrom(source.key()));
      limits(parts, "Agrees with", uses.limitsAlsoFrom(source.key()));
      limits(parts, "Disputes", uses.limitsDisputedBy(source.key()));
      List<RuleEntry> rules = uses.citing(source.key());
      if (!rules.isEmpty()) {
        parts.add(new Part("Rules", List.of(HandbookAnchors.rules(rules))));
      }
      beside(parts, source.key());
      blocks.add(
          new Entry(
              HandbookAnchors.source(source.key()),
              "source",
              citations.full(source.key()),
              "(" + source.key() + ")",
              List.of(),
              parts));
    }
    return new Chapter("sources", "Sources", blocks);
  }

  /** What else rests on a work: numbers worked out, and sentences of the job sheets. */
  private void beside(List<Part> parts, String key) {
    List<RichText> readings =
        List.of(ReadingKind.values()).stream()
            .filter(kind -> kind.sources().contains(key))
            .map(kind -> RichText.link(kind.label(), "readings"))
            .toList();
    if (!readings.isEmpty()) {
      parts.add(new Part("Worked out", List.of(RichText.joined(", ", readings))));
    }
    int sentences =
        (int)
            book.instructions().values().stream()
                .filter(one -> one.sources().contains(key))
                .count();
    if (sentences > 0) {
      RichText counted = RichText.link(Numbers.counted(sentences, "sentence"), "sheets");
      parts.add(new Part("Job sheets", List.of(counted)));
    }
  }

  private static void limits(List<Part> parts, String label, List<Limit> limits) {
    if (!limits.isEmpty()) {
      List<RichText> links =
          limits.stream()
              .map(Limit::id)
              .distinct()
              .map(id -> RichText.link(id, HandbookAnchors.limit(id)))
              .toList();
      parts.add(new Part(label, List.of(RichText.joined(", ", links))));
    }
  }
}
