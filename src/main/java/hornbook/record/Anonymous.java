package hornbook.record;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.Month;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * An entry without names and days. What people wrote in their own words is left out, since it may
 * name anybody; days are counted from the visit, which is day 0.
 */
public final class Anonymous {
  /** What takes the place of a sentence in somebody's own words. */
  public static final String LEFT_OUT = "(left out: own words may name people)";

  private static final List<String> OWN_WORDS =
      List.of("because", "done", "outcome", "despite", "law");
  private static final List<String> NAMES = List.of("horse", "by", "name");
  private static final List<String> GONE =
      List.of("previous", "written", "photos", "emergency", "notes");
  private static final Pattern ISO = Pattern.compile("\\b(\\d{4})-(\\d{2})-(\\d{2})\\b");
  private static final Pattern SPOKEN =
      Pattern.compile("\\b(\\d{1,2}) ([A-Z][a-z]{2,8}) (\\d{4})\\b");

  private final LocalDate day;
  private final List<Map.Entry<String, String>> names = new ArrayList<>();

  private Anonymous(Entry entry) {
    this.day = entry.visited();
    names.add(Map.entry(String.valueOf(entry.horse()), "the horse"));
    names.add(Map.entry(String.valueOf(entry.by()), "the farrier"));
    JsonNode practice = entry.rulebook().path("practice");
    names.add(Map.entry(practice.path("name").asText(), "the practice"));
    names.add(Map.entry(practice.path("by").asText(), "the practice"));
  }

  /** The same entry, told of nobody. */
  public static Entry of(Entry entry) {
    JsonNode stripped = new Anonymous(entry).node(entry.content(), "");
    return new Entry(entry.digest(), stripped);
  }

  private JsonNode node(JsonNode node, String key) {
    if (node.isObject()) {
      ObjectNode copy = JsonNodeFactory.instance.objectNode();
      node.properties().forEach(one -> member(one.getKey(), one.getValue(), copy));
      return copy;
    }
    if (node.isArray()) {
      ArrayNode copy = JsonNodeFactory.instance.arrayNode();
      node.forEach(one -> copy.add(node(one, key)));
      return copy;
    }
    return node.isTextual() ? JsonNodeFactory.instance.textNode(told(node.asText())) : node;
  }

  private void member(String key, JsonNode value, ObjectNode to) {
    if (GONE.contains(key)) {
      to.set(key, value.isArray() ? to.arrayNode() : to.nullNode());
    } else if (value.isTextual() && NAMES.contains(key)) {
      to.putNull(key);
    } else if (value.isTextual() && OWN_WORDS.contains(key)) {
      to.put(key, LEFT_OUT);
    } else if (!(key.equals("date") && value.isTextual())) {
      to.set(key, node(value, key));
    }
  }

  private String told(String text) {
    String told = SPOKEN.matcher(ISO.matcher(text).replaceAll(this::iso)).replaceAll(this::spoken);
    for (Map.Entry<String, String> name : names) {
      if (name.getKey().length() > 1 && !name.getKey().equals("null")) {
        String word = "(?iu)(?<![\\p{L}\\d])" + Pattern.quote(name.getKey()) + "(?![\\p{L}\\d])";
        told = told.replaceAll(word, name.getValue());
      }
    }
    return told;
  }

  private String iso(MatchResult found) {
    return counted(
        Integer.parseInt(found.group(1)),
        Integer.parseInt(found.group(2)),
        Integer.parseInt(found.group(3)),
        found.group());
  }

  private String spoken(MatchResult found) {
    for (Month month : Month.values()) {
      String name = month.name().toLowerCase(Locale.ROOT);
      String told = found.group(2).toLowerCase(Locale.ROOT);
      if (told.equals(name) || told.equals(name.substring(0, 3))) {
        return counted(
            Integer.parseInt(found.group(3)),
            month.getValue(),
            Integer.parseInt(found.group(1)),
            found.group());
      }
    }
    return Matcher.quoteReplacement(found.group());
  }

  private String counted(int year, int month, int of, String otherwise) {
    try {
      LocalDate date = LocalDate.of(year, month, of);
      return day == null ? "a day" : "day " + ChronoUnit.DAYS.between(day, date);
    } catch (DateTimeException none) {
      return Matcher.quoteReplacement(otherwise);
    }
  }
}
