package hornbook.record;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Map;

/**
 * An entry that is to be written; its number and the digest of the one before come when it is.
 *
 * @param chose technique by the word of the limb
 * @param corrects the entry it puts right, or null
 * @param plan the job sheet kept with it, or null
 * @param ahead what is foreseen, by the word of the limb
 */
public record NewEntry(
    Instant written,
    String by,
    String horse,
    Map<String, String> chose,
    String because,
    List<Departure> departures,
    String done,
    Integer corrects,
    JsonNode assessment,
    JsonNode advice,
    JsonNode plan,
    JsonNode ahead,
    String outcome) {

  /** As it stands in the file. */
  public ObjectNode node(int number, String previous, List<Photo> photos) {
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    node.put("format", Entry.FORMAT);
    node.put("number", number);
    node.put("previous", previous);
    node.put("written", written.truncatedTo(ChronoUnit.SECONDS).toString());
    node.put("by", by);
    node.put("horse", horse);
    ObjectNode choice = node.putObject("chose");
    chose.forEach(choice::put);
    node.put("because", because);
    node.put("departs", !departures.isEmpty());
    departures.forEach(one -> node.withArray("/departures").add(one.node()));
    node.put("done", done);
    node.put("corrects", corrects);
    node.set("assessment", assessment);
    node.set("advice", advice);
    node.set("plan", plan);
    node.set("ahead", ahead);
    node.set("rulebook", advice.path("rulebook").deepCopy());
    photos.forEach(
        one ->
            node.withArray("/photos")
                .addObject()
                .put("file", one.file())
                .put("digest", one.digest())
                .put("name", one.name()));
    if (photos.isEmpty()) {
      node.putArray("photos");
    }
    node.put("outcome", outcome);
    return node;
  }
}
