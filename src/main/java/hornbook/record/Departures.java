package hornbook.record;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.MissingNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.UnaryOperator;

/**
 * Where what was chosen is not what the advice says. With a first choice, anything else departs
 * from the advice; without one, whatever the advice rules out, does not support, or leaves to the
 * vet, as long as no vet directs the case.
 */
public final class Departures {
  /** What is chosen when nothing goes on the foot today. */
  public static final String NOTHING = "none";

  private static final List<String> BARE = List.of("come-back", "leave-unshod", "leave-open");

  private final JsonNode advice;
  private final boolean vetDirects;
  private final UnaryOperator<String> labels;

  /**
   * @param advice as the program writes it
   * @param vetDirects whether a vet directs the case
   * @param labels the name of a technique in words of the trade
   */
  public Departures(JsonNode advice, boolean vetDirects, UnaryOperator<String> labels) {
    this.advice = advice;
    this.vetDirects = vetDirects;
    this.labels = labels;
  }

  /** One for each foot on which the choice departs. */
  public List<Departure> of(Map<String, String> chose) {
    List<Departure> all = new ArrayList<>();
    for (JsonNode foot : advice.path("feet")) {
      String technique = chose.get(foot.path("limb").asText());
      if (technique != null) {
        departure(foot, technique, all);
      }
    }
    return all;
  }

  private void departure(JsonNode foot, String technique, List<Departure> to) {
    String first = Entry.text(foot, "firstChoice");
    if (technique.equals(first)) {
      return;
    }
    JsonNode judged = judged(foot, technique);
    String verdict = Entry.text(judged, "verdict");
    String says = technique.equals(NOTHING) ? undone(first) : says(first, technique, judged);
    if (says != null) {
      to.add(
          new Departure(
              foot.path("limb").asText(),
              technique,
              verdict,
              first,
              says,
              forbidden(foot, technique, judged)));
    }
  }

  private String undone(String first) {
    return first == null || BARE.contains(first)
        ? null
        : "The advice is " + labels.apply(first) + "; nothing was put on.";
  }

  /** Null where the choice is within the advice. */
  private String says(String first, String technique, JsonNode judged) {
    String chosen = labels.apply(technique);
    String verdict = judged.path("verdict").asText();
    String instead = first == null ? "" : " It puts " + labels.apply(first) + " first.";
    return switch (verdict) {
      case "ruled-out" ->
          "The advice rules out " + chosen + ": " + reasons(judged, "rules-out") + instead;
      case "not-indicated" -> "Nothing recorded supports " + chosen + "." + instead;
      case "with-vet" ->
          vetDirects && first == null
              ? null
              : "The advice leaves " + chosen + " to the vet." + instead;
      default -> first == null ? null : "The advice allows " + chosen + "." + instead;
    };
  }

  private static String reasons(JsonNode judged, String bearing) {
    List<String> says = new ArrayList<>();
    for (JsonNode reason : judged.path("reasons")) {
      if (bearing.equals(reason.path("bearing").asText())) {
        says.add(Entry.text(reason, "says") + " [" + Entry.text(reason, "rule") + "]");
      }
    }
    return String.join(" ", says);
  }

  /** The calls for the vet that forbid it: each with what it says, and what to do until then. */
  private List<String> forbidden(JsonNode foot, String technique, JsonNode judged) {
    List<String> all = new ArrayList<>();
    for (JsonNode referral : foot.path("referrals")) {
      if (reserves(referral, technique) || named(referral, judged)) {
        String meanwhile = Entry.text(referral, "meanwhile");
        all.add(
            "VET "
                + Entry.text(referral, "urgency").toUpperCase(Locale.ROOT)
                + " ["
                + Entry.text(referral, "rule")
                + "]: "
                + Entry.text(referral, "says")
                + (meanwhile == null ? "" : " Until then: " + meanwhile));
      }
    }
    return all;
  }

  private static boolean reserves(JsonNode referral, String technique) {
    for (JsonNode reserved : referral.path("reserves").path("techniques")) {
      if (technique.equals(reserved.asText())) {
        return true;
      }
    }
    return false;
  }

  /** Whether a reason against the technique comes from the same rule. */
  private static boolean named(JsonNode referral, JsonNode judged) {
    for (JsonNode reason : judged.path("reasons")) {
      boolean against =
          "rules-out".equals(reason.path("bearing").asText()) || reason.path("vet").asBoolean();
      if (against && reason.path("rule").equals(referral.path("rule"))) {
        return true;
      }
    }
    return false;
  }

  private static JsonNode judged(JsonNode foot, String technique) {
    for (JsonNode one : foot.path("techniques")) {
      if (technique.equals(one.path("technique").asText())) {
        return one;
      }
    }
    return MissingNode.getInstance();
  }
}
