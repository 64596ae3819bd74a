package hornbook.record;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import hornbook.advice.FootAdvice;
import hornbook.rulebook.Instruction;
import hornbook.rulebook.fact.Limit;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;

/**
 * What is foreseen for a foot on the day of a visit, kept with the entry: how fast horn grows by
 * the limits of that day, when to come again, and the lines for the owner.
 */
public final class Ahead {
  private static final String CASTING_TAPE = "cast-wrap";
  private static final String LEFT_OPEN = "leave-open";
  private static final List<String> NAILED = List.of("nail-on", "nail-on-adapted");
  private static final String GROWTH_UNIT = "mm/month";

  private Ahead() {}

  /**
   * The part of the entry for one foot.
   *
   * @param technique what was chosen
   * @param visited the day of the visit, or null
   * @param plan the job sheet as the program writes it, or null
   * @param withoutWork what the owner is told where there is no sheet, or one without work
   */
  public static ObjectNode of(
      FootAdvice foot,
      String technique,
      LocalDate visited,
      JsonNode plan,
      List<Instruction> withoutWork) {
    Map<String, Limit> limits = foot.sheet().limits();
    ObjectNode ahead = JsonNodeFactory.instance.objectNode();
    ObjectNode growth = ahead.putObject("growth");
    number(growth, "slow", limits.get("growth.slow"));
    number(growth, "mean", limits.get("growth.mean"));
    number(growth, "fast", limits.get("growth.fast"));
    growth.put("unit", GROWTH_UNIT);
    number(ahead, "measuringError", limits.get("error.length"));
    if (plan != null && plan.path("nextVisitDays").isNumber()) {
      day(ahead, "nextVisit", plan.path("nextVisitDays").asInt(), visited);
    }
    if (technique.equals(CASTING_TAPE)) {
      day(ahead, "wrapOff", limits.get("aftercare.wrap.longest"), visited);
    }
    if (technique.equals(LEFT_OPEN)) {
      day(ahead, "lookAgain", limits.get("open.recheck"), visited);
    } else if (NAILED.contains(technique)) {
      // The owner's sheet: "See the horse trotted tomorrow".
      day(ahead, "lookAgain", 1, visited);
    }
    JsonNode owner = plan == null ? null : plan.path("sheet").path("owner");
    if (owner != null && !owner.isEmpty()) {
      owner.forEach(line -> owner(ahead, line.path("id").asText(), line.path("says").asText()));
    } else {
      withoutWork.forEach(line -> owner(ahead, line.id(), line.says()));
    }
    return ahead;
  }

  private static void owner(ObjectNode ahead, String id, String says) {
    ahead.withArray("/owner").addObject().put("id", id).put("says", says);
  }

  private static void number(ObjectNode node, String key, Limit limit) {
    if (limit != null) {
      node.put(key, limit.value());
    }
  }

  private static void day(ObjectNode node, String key, Limit limit, LocalDate visited) {
    if (limit != null) {
      day(node, key, (int) limit.value(), visited);
    }
  }

  private static void day(ObjectNode node, String key, int days, LocalDate visited) {
    node.put(key + "Days", days);
    if (visited != null) {
      node.put(key, visited.plusDays(days).toString());
    }
  }
}
