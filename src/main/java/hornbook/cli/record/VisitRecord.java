package hornbook.cli.record;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import hornbook.advice.Advice;
import hornbook.advice.FootAdvice;
import hornbook.assessment.VetRole;
import hornbook.assessment.quantity.Units;
import hornbook.assessment.read.ReadResult;
import hornbook.plan.PlanMaker;
import hornbook.plan.sheet.PlanWishes;
import hornbook.plan.sheet.Technique;
import hornbook.plan.time.OwnerWithoutWork;
import hornbook.record.Ahead;
import hornbook.record.AssessmentTree;
import hornbook.record.Departure;
import hornbook.record.Departures;
import hornbook.record.Entry;
import hornbook.record.NewEntry;
import hornbook.record.store.EntryJson;
import hornbook.report.advice.AdviceJson;
import hornbook.rulebook.Instruction;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;

/**
 * A visit put together as an entry: what was seen, the advice on it, and what it looks forward to.
 */
public final class VisitRecord {
  private final ReadResult.Good read;
  private final Advice advice;
  private final JsonNode given;

  public VisitRecord(ReadResult.Good read, Advice advice) {
    this.read = read;
    this.advice = advice;
    this.given = tree(AdviceJson.line(advice, Units.MM));
  }

  /** The advice as an entry keeps it. */
  JsonNode given() {
    return given;
  }

  /** The first choice on every foot that has one. */
  public Map<String, String> firstChoices() {
    Map<String, String> first = new LinkedHashMap<>();
    for (FootAdvice foot : advice.feet()) {
      foot.firstChoice().ifPresent(one -> first.put(foot.limb().word(), one.id()));
    }
    return first;
  }

  List<Departure> departures(Map<String, String> chose, UnaryOperator<String> labels) {
    boolean directs = advice.assessment().visit().vet() == VetRole.DIRECTING;
    return new Departures(given, directs, labels).of(chose);
  }

  /**
   * The entry.
   *
   * @param plan the job sheet to be kept, or null
   */
  NewEntry entry(
      Map<String, String> chose,
      List<Departure> departures,
      RecordedWords words,
      Integer corrects,
      JsonNode plan) {
    return new NewEntry(
        Instant.now(),
        words.by(),
        advice.assessment().horse().name(),
        chose,
        words.because(),
        departures,
        words.done(),
        corrects,
        AssessmentTree.of(read.tree()),
        given,
        plan,
        ahead(chose, plan),
        words.outcome());
  }

  /** The entry it would be, for papers about a visit that is in no book. */
  public Entry unwritten() {
    Map<String, String> chose = firstChoices();
    NewEntry entry = entry(chose, List.of(), RecordedWords.NONE, null, null);
    ObjectNode node = entry.node(0, null, List.of());
    node.putNull("written");
    return new Entry(null, node);
  }

  private ObjectNode ahead(Map<String, String> chose, JsonNode kept) {
    LocalDate visited = advice.assessment().visit().date();
    List<Instruction> withoutWork = OwnerWithoutWork.lines(advice);
    ObjectNode ahead = JsonNodeFactory.instance.objectNode();
    for (FootAdvice foot : advice.feet()) {
      String limb = foot.limb().word();
      String technique = chose.getOrDefault(limb, Departures.NOTHING);
      boolean sheet = kept != null && limb.equals(kept.path("foot").asText());
      JsonNode plan = sheet ? kept : sheet(foot, technique);
      ObjectNode own = Ahead.of(foot, technique, visited, plan, withoutWork);
      KeptSigns.keep(own, foot, advice.rulebook());
      ahead.set(limb, own);
    }
    return ahead;
  }

  /** The job sheet as it would be made for the technique; null for none. */
  private JsonNode sheet(FootAdvice foot, String technique) {
    Technique known = Technique.of(technique);
    if (known == null) {
      return null;
    }
    PlanWishes wishes = new PlanWishes(null, null, null, null, null, List.of(), "chosen");
    return KeptPlan.tree(PlanMaker.plan(advice, foot, known, wishes), Units.MM);
  }

  private static JsonNode tree(String json) {
    return EntryJson.tree(json.getBytes(StandardCharsets.UTF_8));
  }
}
