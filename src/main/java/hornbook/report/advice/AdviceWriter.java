package hornbook.report.advice;

import com.fasterxml.jackson.core.JsonGenerator;
import hornbook.advice.Advice;
import hornbook.advice.AfterVet;
import hornbook.advice.CautionGiven;
import hornbook.advice.FindingGiven;
import hornbook.advice.FootAdvice;
import hornbook.advice.MeasureGiven;
import hornbook.advice.OptionAdvice;
import hornbook.advice.Question;
import hornbook.advice.ReasonGiven;
import hornbook.advice.ReferralGiven;
import hornbook.advice.Statement;
import hornbook.advice.Verdict;
import hornbook.advice.fact.Held;
import hornbook.advice.outcome.NearEqual;
import hornbook.assessment.Assessment;
import hornbook.assessment.quantity.Units;
import hornbook.assessment.word.Word;
import hornbook.foot.FootLimits;
import hornbook.foot.Trim;
import hornbook.report.page.JsonText;
import hornbook.report.words.FactWriter;
import hornbook.report.words.FieldNames;
import hornbook.report.words.Incomplete;
import hornbook.report.words.Phrases;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.fact.Bearing;
import hornbook.rulebook.fact.Reading;
import hornbook.rulebook.fact.Urgency;
import hornbook.rulebook.reserve.Cut;
import hornbook.rulebook.reserve.Move;
import hornbook.rulebook.reserve.Reserves;
import java.io.IOException;
import java.util.List;
import java.util.Optional;

/** One advice as a JSON object. */
final class AdviceWriter {
  private final JsonGenerator json;
  private final Advice advice;
  private final Rulebook book;
  private final Phrases phrases;
  private final FactWriter facts;
  private final boolean brief;

  AdviceWriter(JsonGenerator json, Advice advice, Units units) {
    this(json, advice, units, false);
  }

  /**
   * @param brief whether measures, cautions, questions and the reasons of what is not indicated are
   *     left out; what they stand in is empty then
   */
  AdviceWriter(JsonGenerator json, Advice advice, Units units, boolean brief) {
    this.brief = brief;
    this.json = json;
    this.advice = advice;
    this.book = advice.rulebook();
    this.phrases = new Phrases(book, units);
    this.facts = new FactWriter(json, phrases);
  }

  void write() throws IOException {
    json.writeStartObject();
    json.writeStringField("format", AdviceJson.FORMAT);
    if (brief) {
      json.writeBooleanField("brief", true);
    }
    rulebook();
    Assessment assessment = advice.assessment();
    json.writeStringField("horse", assessment.horse().name());
    Object date = assessment.visit().date();
    json.writeStringField("date", date == null ? null : date.toString());
    bodyWeight();
    urgency(advice.urgency().orElse(null));
    json.writeBooleanField("provisional", advice.provisional());
    json.writeStringField("safety", PageHead.SAFETY);
    json.writeArrayFieldStart("feet");
    for (FootAdvice foot : advice.feet()) {
      foot(foot);
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  private void rulebook() throws IOException {
    json.writeObjectFieldStart("rulebook");
    json.writeStringField("version", book.version());
    json.writeStringField("digest", book.digest());
    new PracticeJson(json, book, advice.feet()).write();
    json.writeEndObject();
  }

  private void bodyWeight() throws IOException {
    MeasureGiven weight = PageHead.weight(advice);
    if (weight == null) {
      json.writeNullField("bodyWeight");
      return;
    }
    boolean weighed = advice.assessment().horse().weight() != null;
    json.writeObjectFieldStart("bodyWeight");
    facts.amount(weight.reading(), weight.unit());
    json.writeStringField("how", weighed ? "measured" : "estimated");
    json.writeEndObject();
  }

  private void urgency(Urgency urgency) throws IOException {
    json.writeStringField("urgency", urgency == null ? null : urgency.word());
  }

  private void foot(FootAdvice foot) throws IOException {
    json.writeStartObject();
    json.writeStringField("limb", foot.limb().word());
    json.writeBooleanField("provisional", foot.provisional());
    urgency(foot.urgency().orElse(null));
    json.writeStringField("firstChoice", foot.firstChoice().map(OptionAdvice::id).orElse(null));
    Optional<NearEqual> near = NearEqual.of(advice, foot);
    if (near.isPresent()) {
      nearEqual(near.get());
    }
    trim(foot);
    incomplete(foot);
    json.writeArrayFieldStart("measures");
    for (MeasureGiven measure : told(foot.measures())) {
      measure(measure);
    }
    json.writeEndArray();
    json.writeArrayFieldStart("findings");
    for (FindingGiven finding : foot.findings()) {
      finding(finding);
    }
    json.writeEndArray();
    json.writeArrayFieldStart("referrals");
    for (ReferralGiven referral : foot.referrals()) {
      referral(referral);
    }
    json.writeEndArray();
    json.writeArrayFieldStart("heldByOtherFeet");
    for (Held held : foot.sheet().held()) {
      held(held);
    }
    json.writeEndArray();
    json.writeStringField(
        "afterVet",
        AfterVet.choice(foot, advice.rulebook()::firstAid).map(OptionAdvice::id).orElse(null));
    judged("techniques", "technique", foot.techniques());
    judged("supports", "support", foot.supports());
    json.writeArrayFieldStart("cautions");
    for (CautionGiven caution : told(foot.cautions())) {
      caution(caution);
    }
    json.writeEndArray();
    json.writeArrayFieldStart("questions");
    for (Question question : told(foot.questions())) {
      question(question);
    }
    json.writeEndArray();
    json.writeEndObject();
  }

  /** What the wall is counted without, and how that is known. */
  private void trim(FootAdvice foot) throws IOException {
    FootLimits limits = foot.sheet().computing();
    Assessment assessment = advice.assessment();
    Trim trim =
        Trim.of(
            assessment.feet().get(foot.index()),
            assessment.visit(),
            limits.growth(),
            limits.trim());
    json.writeObjectFieldStart("trim");
    facts.amount(new Reading("toTrim", trim.mm(), List.of()), "mm");
    json.writeStringField("how", Word.kebab(trim.known().name()));
    json.writeEndObject();
  }

  /** What was begun in the file and counts for nothing as it stands. */
  private void incomplete(FootAdvice foot) throws IOException {
    json.writeArrayFieldStart("incomplete");
    for (Incomplete one : Incomplete.of(advice, foot)) {
      json.writeStartObject();
      json.writeStringField("field", one.field());
      json.writeStringField("says", one.says());
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void nearEqual(NearEqual near) throws IOException {
    json.writeObjectFieldStart("nearEqual");
    json.writeStringField("other", near.other());
    json.writeStringField("measureAgain", near.reading().what());
    json.writeStringField("limit", near.limit().id());
    json.writeStringField("basis", near.limit().basis().word());
    json.writeEndObject();
  }

  private <T> List<T> told(List<T> all) {
    return brief ? List.of() : all;
  }

  private void measure(MeasureGiven measure) throws IOException {
    json.writeStartObject();
    json.writeStringField("id", measure.reading().what());
    json.writeStringField("label", measure.label());
    facts.amount(measure.reading(), measure.unit());
    json.writeStringField("reading", measure.finding());
    says("says", measure.says());
    JsonText.texts(json, "sources", measure.sources());
    json.writeEndObject();
  }

  private void finding(FindingGiven finding) throws IOException {
    json.writeStartObject();
    json.writeStringField("id", finding.id());
    json.writeStringField("label", book.findings().get(finding.id()).label());
    json.writeBooleanField("defect", finding.defect());
    says("says", finding.says());
    json.writeStringField("rule", finding.rule());
    JsonText.texts(json, "sources", finding.sources());
    json.writeEndObject();
  }

  private void referral(ReferralGiven referral) throws IOException {
    json.writeStartObject();
    json.writeStringField("id", referral.id());
    urgency(referral.urgency());
    says("says", referral.says());
    says("meanwhile", referral.meanwhile());
    reserves(referral.reserves());
    json.writeStringField("rule", referral.rule());
    JsonText.texts(json, "sources", referral.sources());
    json.writeStringField("basis", referral.basis().word());
    json.writeEndObject();
  }

  private void held(Held held) throws IOException {
    json.writeStartObject();
    json.writeStringField("from", held.from().word());
    json.writeStringField("rule", held.rule().id());
    reserves(held.reserves());
    json.writeEndObject();
  }

  /** What a call for the vet holds back; left out where that is nothing. */
  private void reserves(Reserves reserves) throws IOException {
    if (reserves.nothing()) {
      return;
    }
    json.writeObjectFieldStart("reserves");
    JsonText.texts(json, "techniques", reserves.techniques());
    JsonText.texts(json, "supports", reserves.supports());
    JsonText.texts(json, "cuts", reserves.cuts().stream().map(Cut::word).toList());
    JsonText.texts(json, "moves", reserves.moves().stream().map(Move::word).toList());
    json.writeStringField("for", reserves.extent().word());
    json.writeStringField("until", reserves.until().word());
    if (reserves.days() != null) {
      json.writeNumberField("days", reserves.days());
    }
    json.writeEndObject();
  }

  private void judged(String list, String key, List<OptionAdvice> all) throws IOException {
    json.writeArrayFieldStart(list);
    for (OptionAdvice judged : all) {
      json.writeStartObject();
      json.writeStringField(key, judged.id());
      json.writeStringField("verdict", judged.verdict().word());
      json.writeArrayFieldStart("reasons");
      boolean open = !brief || judged.verdict() != Verdict.NOT_INDICATED;
      for (ReasonGiven reason : open ? judged.reasons() : List.<ReasonGiven>of()) {
        reason(reason);
      }
      json.writeEndArray();
      json.writeEndObject();
    }
    json.writeEndArray();
  }

  private void reason(ReasonGiven reason) throws IOException {
    json.writeStartObject();
    json.writeStringField("bearing", reason.bearing().word());
    json.writeBooleanField("vet", reason.bearing() == Bearing.NEEDS_VET);
    json.writeStringField("rule", reason.rule());
    says("says", reason.says());
    facts.observed(reason);
    json.writeBooleanField("close", reason.close());
    JsonText.texts(json, "sources", reason.sources());
    json.writeStringField("basis", reason.basis().word());
    json.writeEndObject();
  }

  private void caution(CautionGiven caution) throws IOException {
    json.writeStartObject();
    json.writeStringField("id", caution.id());
    says("says", caution.says());
    json.writeStringField("rule", caution.rule());
    JsonText.texts(json, "techniques", caution.techniques());
    JsonText.texts(json, "sources", caution.sources());
    json.writeStringField("basis", caution.basis().word());
    json.writeEndObject();
  }

  private void question(Question question) throws IOException {
    json.writeStartObject();
    json.writeStringField("field", question.field());
    json.writeStringField("label", FieldNames.of(question.field()));
    json.writeStringField("why", question.why());
    JsonText.texts(json, "couldChange", question.couldChange());
    urgency(question.urgency());
    json.writeStringField("worth", question.worth().word());
    json.writeBooleanField("provisional", question.provisional());
    json.writeEndObject();
  }

  private void says(String key, Statement says) throws IOException {
    json.writeStringField(key, says == null ? null : phrases.says(says));
  }
}
