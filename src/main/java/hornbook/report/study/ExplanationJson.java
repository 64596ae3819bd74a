package hornbook.report.study;

import com.fasterxml.jackson.core.JsonGenerator;
import hornbook.advice.fact.Truth;
import hornbook.assessment.field.FieldValue;
import hornbook.assessment.quantity.Units;
import hornbook.assessment.word.Word;
import hornbook.report.advice.PageHead;
import hornbook.report.advice.PracticeJson;
import hornbook.report.page.JsonText;
import hornbook.report.words.FactWriter;
import hornbook.report.words.Phrases;
import hornbook.report.words.RecordedText;
import hornbook.report.words.RuleWords;
import hornbook.report.words.Sentence;
import hornbook.rulebook.Condition;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.Subjects;
import hornbook.rulebook.fact.Limit;
import hornbook.rulebook.fact.Reading;
import hornbook.study.explain.Answer;
import hornbook.study.explain.ChainLink;
import hornbook.study.explain.Explanation;
import hornbook.study.explain.RuleChain;
import hornbook.study.explain.Subject;
import java.io.IOException;
import java.util.List;

/** Writes explanations in the format {@code hornbook-why/1}. */
public final class ExplanationJson {
  public static final String FORMAT = "hornbook-why/1";

  private final JsonGenerator json;
  private final Rulebook book;
  private final Phrases phrases;
  private final FactWriter facts;
  private final ChainLinkText links;
  private final RuleWords words;

  private ExplanationJson(JsonGenerator json, Rulebook book, Units units) {
    this.json = json;
    this.book = book;
    this.phrases = new Phrases(book, units);
    this.facts = new FactWriter(json, phrases);
    this.links = new ChainLinkText(book, phrases);
    this.words = new RuleWords(book, phrases);
  }

  /** The explanations of one subject, one for each foot asked about, at least one. */
  public static String of(List<Explanation> all, Rulebook book, Units units) {
    return JsonText.of(json -> new ExplanationJson(json, book, units).write(all));
  }

  private void write(List<Explanation> all) throws IOException {
    Subject subject = all.get(0).subject();
    json.writeStartObject();
    json.writeStringField("format", FORMAT);
    json.writeStringField("question", all.get(0).whyNot() ? "why-not" : "why");
    json.writeObjectFieldStart("subject");
    json.writeStringField("kind", subject.kind().word());
    json.writeStringField("id", subject.id());
    json.writeEndObject();
    json.writeArrayFieldStart("feet");
    for (Explanation one : all) {
      explanation(one);
    }
    json.writeEndArray();
    json.writeObjectFieldStart("rulebook");
    json.writeStringField("version", book.version());
    json.writeStringField("digest", book.digest());
    new PracticeJson(json, book, all.stream().map(Explanation::foot).toList()).write();
    json.writeEndObject();
    json.writeStringField("safety", PageHead.SAFETY);
    json.writeEndObject();
  }

  private void explanation(Explanation one) throws IOException {
    json.writeStartObject();
    json.writeStringField("limb", one.foot().limb().word());
    json.writeStringField("says", Sentence.capital(new Headline(book, phrases).of(one)));
    answer(one.answer());
    chains("deciding", one.deciding());
    chains("further", one.further());
    chains("silent", one.silent());
    json.writeEndObject();
  }

  private void answer(Answer answer) throws IOException {
    if (answer instanceof Answer.Judgement judgement) {
      json.writeStringField("verdict", judgement.judged().verdict().word());
      json.writeStringField("settledBy", kebab(judgement.settled().by()));
      JsonText.texts(json, "about", judgement.settled().about());
    } else if (answer instanceof Answer.Known known) {
      json.writeBooleanField("known", known.known());
      json.writeFieldName("reading");
      facts.fact(known.reading());
      json.writeArrayFieldStart("words");
      for (var seen : known.seen()) {
        json.writeString(seen.word());
      }
      json.writeEndArray();
      observed(known.noted());
    } else {
      Answer.Given given = (Answer.Given) answer;
      json.writeBooleanField("given", given.given());
      JsonText.texts(json, "closedFor", given.closedFor());
    }
  }

  private void chains(String name, List<RuleChain> chains) throws IOException {
    json.writeArrayFieldStart(name);
    for (RuleChain chain : chains) {
      chain(chain);
    }
    json.writeEndArray();
  }

  private void chain(RuleChain chain) throws IOException {
    json.writeStartObject();
    json.writeStringField("rule", chain.rule().id());
    json.writeStringField("title", chain.rule().title());
    holds(chain.truth());
    json.writeStringField("then", words.outcome(chain.rule()));
    json.writeStringField("basis", chain.basis().word());
    JsonText.texts(json, "sources", chain.rule().text().sources());
    int obstacle = chain.obstacle().map(chain.links()::indexOf).orElse(-1);
    json.writeFieldName("obstacle");
    if (obstacle < 0) {
      json.writeNull();
    } else {
      json.writeNumber(obstacle);
    }
    json.writeArrayFieldStart("links");
    for (ChainLink link : chain.links()) {
      link(link, chain);
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private void link(ChainLink link, RuleChain chain) throws IOException {
    json.writeStartObject();
    holds(link.truth());
    json.writeStringField("says", links.comparison(link, chain.rule(), true));
    observed(link.noted());
    if (link.condition() instanceof Condition.OfFinding finding) {
      json.writeStringField("finding", finding.what());
      chains("makers", link.makers());
    } else if (link.condition() instanceof Condition.OfReading reading) {
      json.writeStringField("reading", reading.what());
      boolean known = !link.state().cited().isEmpty();
      if (known) {
        facts.amount((Reading) link.state().cited().get(0), Subjects.unit(reading.what()));
      }
    }
    limit(link);
    json.writeEndObject();
  }

  private void limit(ChainLink link) throws IOException {
    Limit limit = link.asked();
    json.writeFieldName("limit");
    if (limit == null) {
      json.writeNull();
      return;
    }
    facts.fact(limit);
    json.writeStringField("locator", limit.locator());
    if (link.off() != null) {
      json.writeFieldName("off");
      facts.number(phrases.amounts().gapAmount(link.off(), limit.unit()));
    }
  }

  private void observed(List<FieldValue> noted) throws IOException {
    json.writeArrayFieldStart("observed");
    RecordedText text = new RecordedText(phrases.amounts());
    for (FieldValue field : noted) {
      json.writeStartObject();
      json.writeStringField("field", field.path());
      json.writeStringField("value", field.value() == null ? null : text.value(field));
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  /** True, false, or null where it is not known. */
  private void holds(Truth truth) throws IOException {
    json.writeFieldName("holds");
    if (truth == Truth.UNKNOWN) {
      json.writeNull();
    } else {
      json.writeBoolean(truth == Truth.TRUE);
    }
  }

  private static String kebab(Enum<?> constant) {
    return Word.kebab(constant.name());
  }
}
