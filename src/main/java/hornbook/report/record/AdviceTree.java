package hornbook.report.record;

import com.fasterxml.jackson.databind.JsonNode;
import hornbook.record.Entry;
import hornbook.report.words.Amounts;
import hornbook.report.words.FieldNames;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The advice as it was given, read back from the entry that keeps it. */
final class AdviceTree {
  private final Entry entry;

  AdviceTree(Entry entry) {
    this.entry = entry;
  }

  List<JsonNode> feet() {
    List<JsonNode> feet = new ArrayList<>();
    entry.advice().path("feet").forEach(feet::add);
    return feet;
  }

  /** {@code left fore}. */
  static String limb(JsonNode foot) {
    return limb(Entry.text(foot, "limb"));
  }

  static String limb(String word) {
    return word == null ? "a foot" : word.replace('-', ' ');
  }

  static List<JsonNode> all(JsonNode foot, String key) {
    List<JsonNode> all = new ArrayList<>();
    foot.path(key).forEach(all::add);
    return all;
  }

  /** {@code VET TODAY}. */
  static String urgency(JsonNode referral) {
    String urgency = String.valueOf(Entry.text(referral, "urgency"));
    return switch (urgency) {
      case "now" -> "VET NOW";
      case "today" -> "VET TODAY";
      case "days" -> "VET WITHIN DAYS";
      default -> "MENTION TO THE VET";
    };
  }

  /** Whether a vet has to come for it. */
  static boolean calls(JsonNode referral) {
    return !"mention".equals(Entry.text(referral, "urgency"));
  }

  /** The verdict on a technique in words; null where the advice says nothing of it. */
  static String verdict(JsonNode foot, String technique) {
    for (JsonNode one : foot.path("techniques")) {
      if (technique.equals(one.path("technique").asText())) {
        return String.valueOf(Entry.text(one, "verdict")).replace('-', ' ');
      }
    }
    return null;
  }

  /** Techniques of one verdict, by their ids. */
  static List<String> techniques(JsonNode foot, String verdict) {
    List<String> ids = new ArrayList<>();
    for (JsonNode one : foot.path("techniques")) {
      if (verdict.equals(one.path("verdict").asText())) {
        ids.add(Entry.text(one, "technique"));
      }
    }
    return ids;
  }

  /** Signs not looked at that could have called the vet, in words. */
  static List<String> notLookedAt(JsonNode foot) {
    List<String> names = new ArrayList<>();
    for (JsonNode question : foot.path("questions")) {
      if (question.path("provisional").asBoolean()) {
        names.add(FieldNames.of(Entry.text(question, "field")));
      }
    }
    return names.stream().distinct().toList();
  }

  /** A number with its unit, or between which it lies. */
  static String amount(JsonNode measure, Amounts amounts) {
    String unit = String.valueOf(Entry.text(measure, "unit"));
    if (measure.path("value").isNumber()) {
      return amounts.text(measure.path("value").asDouble(), unit);
    }
    double low = measure.path("low").asDouble(Double.NEGATIVE_INFINITY);
    double high = measure.path("high").asDouble(Double.POSITIVE_INFINITY);
    return amounts.text(low, high, unit, 0);
  }

  static String upper(String words) {
    return words.toUpperCase(Locale.ROOT);
  }
}
