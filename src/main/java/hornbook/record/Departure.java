package hornbook.record;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;

/**
 * A choice on a foot that is not what the advice says.
 *
 * @param foot the word of the limb
 * @param verdict what the advice says of the technique chosen
 * @param firstChoice what it puts first, or null
 * @param says in a sentence, where the choice leaves the advice
 * @param forbidden what a call for the vet forbids that was chosen all the same: a sentence each
 */
public record Departure(
    String foot,
    String technique,
    String verdict,
    String firstChoice,
    String says,
    List<String> forbidden) {

  static Departure of(JsonNode node) {
    List<String> forbidden = new ArrayList<>();
    node.path("forbidden").forEach(one -> forbidden.add(Printable.of(one.asText())));
    return new Departure(
        Entry.text(node, "foot"),
        Entry.text(node, "technique"),
        Entry.text(node, "verdict"),
        Entry.text(node, "firstChoice"),
        Entry.text(node, "says"),
        forbidden);
  }

  ObjectNode node() {
    ObjectNode node = JsonNodeFactory.instance.objectNode();
    node.put("foot", foot);
    node.put("technique", technique);
    node.put("verdict", verdict);
    node.put("firstChoice", firstChoice);
    node.put("says", says);
    forbidden.forEach(node.putArray("forbidden")::add);
    return node;
  }
}
