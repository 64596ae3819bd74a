package hornbook.rulebook.load;

import hornbook.rulebook.Condition;
import hornbook.rulebook.FindingKind;
import hornbook.rulebook.GlossaryTerm;
import hornbook.rulebook.Instruction;
import hornbook.rulebook.NamedOption;
import hornbook.rulebook.RuleConclusion;
import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.Source;
import hornbook.rulebook.WordTest;
import hornbook.rulebook.fact.Limit;
import hornbook.rulebook.reserve.Reserves;
import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;

/** Writes a rule base as a compact file, in the order {@link CatalogueReader} reads it. */
public final class CatalogueWriter {
  private final ByteArrayOutputStream rest = new ByteArrayOutputStream();
  private final DataOutputStream out = new DataOutputStream(rest);
  private final Map<String, Integer> texts = new LinkedHashMap<>();

  private CatalogueWriter() {}

  public static void write(Rulebook book, OutputStream to) throws IOException {
    CatalogueWriter writer = new CatalogueWriter();
    writer.book(book);
    DataOutputStream head = new DataOutputStream(to);
    head.writeInt(CatalogueReader.FORM);
    writer.texts(head);
    writer.rest.writeTo(head);
    head.flush();
  }

  /** Every text once; the number of bytes below zero where letters take more than one. */
  private void texts(DataOutputStream head) throws IOException {
    head.writeInt(texts.size());
    for (String text : texts.keySet()) {
      boolean single = StandardCharsets.ISO_8859_1.newEncoder().canEncode(text);
      byte[] bytes = text.getBytes(single ? StandardCharsets.ISO_8859_1 : StandardCharsets.UTF_8);
      head.writeInt(single ? bytes.length : -bytes.length);
      head.write(bytes);
    }
  }

  private void book(Rulebook book) throws IOException {
    text(book.version());
    text(book.digest());
    each(book.topics(), topic -> texts(topic.id(), topic.letter(), topic.title()));
    each(book.techniques(), this::named);
    each(book.supports(), this::named);
    each(book.sources().values(), this::source);
    each(book.findings().values(), this::finding);
    each(book.limits(), this::limit);
    each(book.rules().values(), this::rule);
    each(book.instructions().values(), this::instruction);
    each(book.glossary(), this::term);
  }

  private void term(GlossaryTerm term) throws IOException {
    texts(term.word(), term.says());
    each(term.also(), this::text);
  }

  private void named(NamedOption named) throws IOException {
    texts(named.id(), named.label());
    out.writeBoolean(named.firstAid());
    out.writeBoolean(named.shoe());
  }

  private void source(Source source) throws IOException {
    texts(source.key(), source.author(), source.title(), source.where());
    out.writeInt(source.year());
  }

  private void finding(FindingKind finding) throws IOException {
    texts(finding.id(), finding.label(), finding.topic());
    out.writeBoolean(finding.defect());
    each(finding.excludes(), this::text);
  }

  private void limit(Limit limit) throws IOException {
    texts(limit.id(), limit.label(), limit.unit(), limit.source(), limit.locator());
    out.writeDouble(limit.value());
    out.writeDouble(limit.step());
    out.writeBoolean(limit.inclusive());
    constant(limit.direction());
    constant(limit.limbs());
    constant(limit.age());
    constant(limit.basis());
    constant(limit.safer());
    each(
        limit.disputes(),
        dispute -> {
          texts(dispute.source(), dispute.says());
          out.writeBoolean(dispute.value() != null);
          if (dispute.value() != null) {
            out.writeDouble(dispute.value());
          }
        });
    out.writeBoolean(limit.computing());
  }

  private void rule(RuleEntry rule) throws IOException {
    texts(
        rule.id(),
        rule.title(),
        rule.topic(),
        rule.since(),
        rule.why(),
        rule.silent(),
        rule.file());
    out.writeInt(rule.line());
    constant(rule.basis());
    each(rule.conditions(), this::condition);
    outcome(rule.outcome());
    text(rule.text().says());
    text(rule.text().meanwhile());
    each(rule.text().sources(), this::text);
    each(rule.text().techniques(), this::text);
    each(rule.text().dissents(), this::text);
    reserves(rule.text().reserves());
    each(rule.text().does(), this::text);
    each(rule.text().against(), this::text);
    constant(rule.text().shown());
  }

  private void reserves(Reserves reserves) throws IOException {
    out.writeBoolean(!reserves.nothing());
    if (!reserves.nothing()) {
      each(reserves.techniques(), this::text);
      each(reserves.supports(), this::text);
      each(reserves.cuts().stream().sorted().toList(), this::constant);
      each(reserves.moves().stream().sorted().toList(), this::constant);
      constant(reserves.extent());
      constant(reserves.until());
      out.writeInt(reserves.days() == null ? 0 : reserves.days());
    }
  }

  private void instruction(Instruction instruction) throws IOException {
    texts(instruction.id(), instruction.says());
    each(instruction.sources(), this::text);
    constant(instruction.basis());
    each(instruction.cuts(), this::constant);
    each(instruction.moves(), this::constant);
  }

  private void condition(Condition condition) throws IOException {
    if (condition instanceof Condition.OfLimit limit) {
      out.writeByte(CatalogueReader.LIMIT);
      texts(limit.variable(), limit.id());
    } else if (condition instanceof Condition.OfReading reading) {
      out.writeByte(CatalogueReader.READING);
      texts(reading.variable(), reading.what(), reading.limit());
      out.writeBoolean(reading.satisfies());
    } else if (condition instanceof Condition.OfSeen seen) {
      out.writeByte(CatalogueReader.SEEN);
      texts(seen.variable(), seen.what());
      test(seen.word());
    } else if (condition instanceof Condition.OfCrack crack) {
      out.writeByte(CatalogueReader.CRACK);
      text(crack.variable());
      tests(crack.words());
    } else if (condition instanceof Condition.OfStretch stretch) {
      out.writeByte(CatalogueReader.STRETCH);
      text(stretch.variable());
      tests(stretch.words());
    } else if (condition instanceof Condition.OfFinding finding) {
      out.writeByte(CatalogueReader.FINDING);
      texts(finding.variable(), finding.what());
    }
  }

  private void outcome(RuleConclusion outcome) throws IOException {
    if (outcome instanceof RuleConclusion.Finds finds) {
      out.writeByte(CatalogueReader.FINDS);
      text(finds.finding());
    } else if (outcome instanceof RuleConclusion.Refers refers) {
      out.writeByte(CatalogueReader.REFERS);
      constant(refers.urgency());
      text(refers.id());
    } else if (outcome instanceof RuleConclusion.Reasons reasons) {
      out.writeByte(CatalogueReader.REASONS);
      constant(reasons.bearing());
      each(reasons.subjects(), this::text);
    } else if (outcome instanceof RuleConclusion.Cautions cautions) {
      out.writeByte(CatalogueReader.CAUTIONS);
      text(cautions.id());
    }
    each(outcome.cites(), this::text);
  }

  private void tests(Map<String, WordTest> tests) throws IOException {
    each(
        tests.entrySet(),
        test -> {
          text(test.getKey());
          test(test.getValue());
        });
  }

  private void test(WordTest test) throws IOException {
    out.writeBoolean(test.oneOf());
    each(test.words(), this::text);
  }

  /** What writes one of many. */
  private interface One<T> {
    void write(T one) throws IOException;
  }

  private <T> void each(Collection<T> all, One<T> one) throws IOException {
    out.writeInt(all.size());
    for (T each : all) {
      one.write(each);
    }
  }

  private void constant(Enum<?> constant) throws IOException {
    out.writeByte(constant == null ? -1 : constant.ordinal());
  }

  private void texts(String... texts) throws IOException {
    for (String text : texts) {
      text(text);
    }
  }

  private void text(String text) throws IOException {
    out.writeInt(text == null ? -1 : texts.computeIfAbsent(text, any -> texts.size()));
  }
}
