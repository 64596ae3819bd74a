package hornbook.record;

import com.fasterxml.jackson.databind.JsonNode;
import java.time.Instant;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * One entry of the daybook, as it stands in its file. Whatever a file holds, texts come out safe to
 * show, and what is absent or of another kind is null or empty.
 *
 * @param digest of the bytes of its file
 * @param content the whole of the file
 */
public record Entry(String digest, JsonNode content) {
  public static final String FORMAT = "hornbook-entry/1";

  public int number() {
    return content.path("number").asInt();
  }

  /** The digest of the entry before; null for the first. */
  public String previous() {
    return text("previous");
  }

  /** When it was written by the clock of that machine; null when that cannot be read. */
  public Instant written() {
    try {
      String written = text("written");
      return written == null ? null : Instant.parse(written);
    } catch (DateTimeParseException unreadable) {
      return null;
    }
  }

  public String by() {
    return text("by");
  }

  public String horse() {
    return text("horse");
  }

  /** The technique chosen, by the word of the limb. */
  public Map<String, String> chose() {
    Map<String, String> chose = new LinkedHashMap<>();
    content
        .path("chose")
        .properties()
        .forEach(
            one -> chose.put(Printable.of(one.getKey()), Printable.of(one.getValue().asText())));
    return chose;
  }

  public String because() {
    return text("because");
  }

  public boolean departs() {
    return content.path("departs").asBoolean();
  }

  /** Where the choice is not what the advice says, as it was worked out then. */
  public List<Departure> departures() {
    List<Departure> all = new ArrayList<>();
    content.path("departures").forEach(one -> all.add(Departure.of(one)));
    return all;
  }

  public String done() {
    return text("done");
  }

  public String outcome() {
    return text("outcome");
  }

  /** The number of the entry it puts right, or null. */
  public Integer corrects() {
    JsonNode corrects = content.path("corrects");
    return corrects.isInt() ? corrects.asInt() : null;
  }

  public JsonNode assessment() {
    return content.path("assessment");
  }

  public JsonNode advice() {
    return content.path("advice");
  }

  /** The job sheet kept with it; a missing node where there is none. */
  public JsonNode plan() {
    return content.path("plan");
  }

  public JsonNode rulebook() {
    return content.path("rulebook");
  }

  /** What was foreseen for a foot that day: growth, next visit, lines for the owner. */
  public JsonNode ahead(String limb) {
    return content.path("ahead").path(limb);
  }

  public List<Photo> photos() {
    List<Photo> photos = new ArrayList<>();
    for (JsonNode one : content.path("photos")) {
      photos.add(new Photo(text(one, "file"), text(one, "digest"), text(one, "name")));
    }
    return photos;
  }

  /** The day of the visit, or null. */
  public LocalDate visited() {
    return date(text(assessment().path("visit"), "date"));
  }

  private String text(String key) {
    return text(content, key);
  }

  /** A text of a node, safe to show; null where there is none. */
  public static String text(JsonNode node, String key) {
    JsonNode value = node.path(key);
    return value.isValueNode() && !value.isNull() ? Printable.of(value.asText()) : null;
  }

  /** A day as {@code 2026-04-18}; null where it is none. */
  public static LocalDate date(String text) {
    try {
      return text == null ? null : LocalDate.parse(text);
    } catch (DateTimeParseException none) {
      return null;
    }
  }
}
