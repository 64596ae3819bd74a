package hornbook.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import hornbook.advice.Advice;
import hornbook.advice.FootAdvice;
import hornbook.advice.engine.Advisor;
import hornbook.assessment.quantity.Units;
import hornbook.assessment.read.AssessmentReader;
import hornbook.assessment.read.ReadResult;
import hornbook.assessment.tree.Fault;
import hornbook.plan.Plan;
import hornbook.plan.PlanMaker;
import hornbook.plan.sheet.PlanWishes;
import hornbook.plan.sheet.Technique;
import hornbook.report.advice.AdviceHtml;
import hornbook.report.advice.AdviceJson;
import hornbook.report.advice.AdviceMarkdown;
import hornbook.report.advice.AdviceText;
import hornbook.report.page.TextOptions;
import hornbook.report.sheet.PlanJson;
import hornbook.report.sheet.PlanMarkdown;
import hornbook.report.sheet.PlanText;
import hornbook.report.study.ExplanationJson;
import hornbook.report.study.ExplanationText;
import hornbook.rulebook.Practice;
import hornbook.rulebook.fact.Urgency;
import hornbook.rulebook.load.LoadedRules;
import hornbook.rulebook.practice.PracticeReader;
import hornbook.rules.Shipped;
import hornbook.study.explain.Explainer;
import hornbook.study.explain.Explanation;
import hornbook.study.explain.SubjectNames;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** What a local practice changes and adds stands on every page it touches, in every form. */
public class PracticePagesTest {
  private static final String YARD =
      """
      format: hornbook-practice/1
      name: Upper Yard
      by: the head farrier
      date: 2026-03-14
      limits:
        - {id: nails.branch.least, value: 3, reason: heavy going tears two nails out}
        - {id: growth.slow, value: 5, age: adult, reason: measured here over two winters}
        - {id: referral.foal.newborn, value: 21, reason: the vet asks to see them longer}
      notes:
        - {topic: nailing, says: Bring the nails a size down.}
        - {technique: prosthetic-wall, says: Only in the closed shed.}
      law: Shoeing is reserved to licensed farriers here.
      emergency:
        - {name: Duty vet, number: 0555 010 010}
      """;

  private static final Advisor OURS = new Advisor(rules());

  /** Pages written already. */
  private static final Map<String, List<String>> FORMS = new HashMap<>();

  /** The shipped rules as the practice has them. */
  public static LoadedRules rules() {
    List<Fault> faults = new ArrayList<>();
    byte[] file = YARD.getBytes(StandardCharsets.UTF_8);
    Practice practice = PracticeReader.read(file, "yard.yaml", Shipped.BOOK, true, faults);
    assertThat(faults).isEmpty();
    return Shipped.RULES.under(Shipped.BOOK.under(practice));
  }

  private static Advice advice(String resource) throws Exception {
    return OURS.advise(Pages.advice(resource).assessment());
  }

  private static List<String> everyForm(String resource) throws Exception {
    if (!FORMS.containsKey(resource)) {
      FORMS.put(resource, everyForm(advice(resource)));
    }
    return FORMS.get(resource);
  }

  private static List<String> everyForm(Advice advice) {
    List<String> pages = new ArrayList<>();
    Pages.options().forEach(options -> pages.add(AdviceText.render(advice, options)));
    pages.add(AdviceHtml.render(advice, Units.MM));
    pages.add(AdviceMarkdown.render(advice, Units.MM).replace("\\", "").replace("**", ""));
    return pages.stream().map(page -> page.replaceAll("\\s+", " ")).toList();
  }

  @Test
  void name_law_and_what_was_moved_toward_less_safety_stand_on_every_page() throws Exception {
    for (String foot : List.of("torn-toe", "everything-wrong", "nothing-known", "two-feet")) {
      assertThat(everyForm(foot))
          .allSatisfy(
              page ->
                  assertThat(page)
                      .contains("Upper Yard", "(the head farrier, 14 March 2026")
                      .contains("Shoeing is reserved to licensed farriers here.")
                      .contains("LESS SAFE: ")
                      .contains("(growth.slow)")
                      .contains("measured here over two winters"));
    }
  }

  @Test
  void a_limit_that_met_a_number_of_the_foot_stands_there_with_old_and_new_and_reason()
      throws Exception {
    assertThat(everyForm("torn-toe"))
        .allSatisfy(
            page ->
                assertThat(page)
                    .contains(
                        "Moved: fewest nails that hold a branch (nails.branch.least) 3 in place of"
                            + " 2: heavy going tears two nails out"));
  }

  @Test
  void a_limit_that_met_none_does_not() throws Exception {
    assertThat(everyForm("nothing-known"))
        .noneMatch(page -> page.contains("nails.branch.least) 3"));
    assertThat(everyForm("torn-toe")).noneMatch(page -> page.contains("asks to see them"));
  }

  @Test
  void a_note_stands_where_its_topic_speaks() throws Exception {
    assertThat(everyForm("torn-toe")).allMatch(page -> page.contains("a size down."));
    assertThat(everyForm("nothing-known")).noneMatch(page -> page.contains("a size down."));
  }

  @Test
  void nothing_of_it_stands_above_a_call_for_the_vet() throws Exception {
    int calls = 0;
    for (Path file : Shipped.files(Shipped.EXERCISES)) {
      byte[] text = Files.readAllBytes(file);
      Advice advice =
          OURS.advise(
              ((ReadResult.Good) AssessmentReader.read(text, file.toString(), List.of()))
                  .assessment());
      Urgency soonest = advice.urgency().orElse(Urgency.MENTION);
      if (soonest == Urgency.NOW || soonest == Urgency.TODAY) {
        calls++;
        for (String page : everyForm(advice)) {
          String upper = page.toUpperCase(Locale.ROOT);
          assertThat(upper).contains("VET " + soonest.name(), "UPPER YARD");
          assertThat(upper.indexOf("UPPER YARD")).isGreaterThan(upper.indexOf("VET " + soonest));
        }
      }
    }
    assertThat(calls).isGreaterThan(10);
  }

  @Test
  void whom_to_call_stands_where_the_vet_is_called() throws Exception {
    for (String foot : List.of("torn-toe", "everything-wrong", "nothing-known", "two-feet")) {
      Advice advice = advice(foot);
      boolean calls = advice.urgency().isPresent();
      assertThat(everyForm(foot))
          .allSatisfy(
              page -> assertThat(page.contains("Duty vet 0555 010 010")).as(page).isEqualTo(calls));
    }
    assertThat(advice("everything-wrong").urgency()).isPresent();
  }

  @Test
  void a_moved_limit_is_cited_from_the_practice_and_no_better_than_practice() throws Exception {
    JsonNode json = new ObjectMapper().readTree(AdviceJson.line(advice("torn-toe"), Units.MM));
    JsonNode limits = json.at("/rulebook/practice/limits");
    assertThat(limits).hasSize(3);
    assertThat(limits.get(0).toString())
        .contains("\"id\":\"nails.branch.least\"", "\"was\":2.0", "\"value\":3.0")
        .contains("\"lessSafe\":false", "\"touches\":true");
    assertThat(limits.get(1).get("lessSafe").booleanValue()).isTrue();
    assertThat(limits.get(2).get("touches").booleanValue()).isFalse();
    List<JsonNode> held = new ArrayList<>();
    json.findParents("rule").stream()
        .filter(one -> "nails.branch.least".equals(one.at("/limit/id").asText()))
        .forEach(held::add);
    assertThat(held).isNotEmpty();
    assertThat(held)
        .allSatisfy(
            one -> {
              assertThat(one.at("/limit/value").doubleValue()).isEqualTo(3);
              assertThat(one.get("sources").toString()).contains("local-practice");
              assertThat(one.get("basis").asText()).isIn("practice", "memory");
            });
  }

  @Test
  void job_sheets_and_explanations_show_it_too() throws Exception {
    Advice advice = advice("torn-toe");
    FootAdvice foot = advice.feet().get(0);
    Plan plan = PlanMaker.plan(advice, foot, Technique.NAIL_ON, PlanWishes.NONE);
    Explanation why =
        new Explainer(advice, foot)
            .whyNot(new SubjectNames(advice.rulebook()).named("nail-on").orElseThrow());
    List<Explanation> asked = List.of(why);
    List<String> pages =
        List.of(
            PlanText.render(plan, Units.MM),
            PlanMarkdown.render(plan, Units.MM).replace("\\", ""),
            ExplanationText.render(asked, advice.rulebook(), TextOptions.usual()));
    assertThat(pages.stream().map(page -> page.replaceAll("\\s+", " ")))
        .allSatisfy(
            page ->
                assertThat(page)
                    .contains("Upper Yard", "LESS SAFE", "nails.branch.least) 3 in place of 2")
                    .contains("Law: Shoeing is reserved"));
    StringWriter sheet = new StringWriter();
    PlanJson.write(plan, Units.MM, sheet);
    for (String json :
        List.of(sheet.toString(), ExplanationJson.of(asked, advice.rulebook(), Units.MM))) {
      JsonNode practice = new ObjectMapper().readTree(json).at("/rulebook/practice");
      assertThat(practice.get("name").asText()).isEqualTo("Upper Yard");
      assertThat(practice.get("limits")).hasSize(3);
    }
  }

  @Test
  void without_one_there_is_none() throws Exception {
    String json = AdviceJson.line(Pages.advice("torn-toe"), Units.MM);
    assertThat(new ObjectMapper().readTree(json).at("/rulebook/practice").isNull()).isTrue();
    assertThat(everyForm(Pages.advice("torn-toe"))).noneMatch(page -> page.contains("PRACTICE:"));
  }
}
