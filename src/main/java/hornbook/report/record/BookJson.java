package hornbook.report.record;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import hornbook.record.EntryLine;
import hornbook.record.store.BookFault;
import hornbook.record.store.EntryJson;
import hornbook.record.store.Verified;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** The list of entries, and what came of checking a book, as JSON. */
public final class BookJson {
  public static final String LIST = "hornbook-daybook/1";
  public static final String VERIFIED = "hornbook-verified/1";

  private BookJson() {}

  public static String list(List<EntryLine> entries) {
    ObjectNode node = JsonNodeFactory.instance.objectNode().put("format", LIST);
    ArrayNode list = node.putArray("entries");
    for (EntryLine entry : entries) {
      ObjectNode one = list.addObject();
      one.put("number", entry.number());
      one.put("digest", entry.digest());
      one.put("written", entry.written());
      one.put("date", entry.visited() == null ? null : entry.visited().toString());
      one.put("horse", entry.horse());
      one.put("by", entry.by());
      ObjectNode chose = one.putObject("chose");
      if (entry.chose() != null) {
        for (String foot : entry.chose().split(", ")) {
          String[] both = foot.split(": ", 2);
          chose.put(both[0], both[both.length - 1]);
        }
      }
      one.put("departs", entry.departs());
      one.put("corrects", entry.corrects() == 0 ? null : entry.corrects());
    }
    return text(node);
  }

  public static String verified(Verified verified) {
    ObjectNode node = JsonNodeFactory.instance.objectNode().put("format", VERIFIED);
    node.put("entries", verified.entries());
    node.put("whole", verified.whole());
    ArrayNode faults = node.putArray("faults");
    for (BookFault fault : verified.faults()) {
      ObjectNode one = faults.addObject();
      one.put("entry", fault.entry() == 0 ? null : fault.entry());
      one.put("kind", fault.kind().word());
      one.put("says", fault.says());
    }
    verified.remarks().forEach(node.putArray("remarks")::add);
    return text(node);
  }

  private static String text(ObjectNode node) {
    return new String(EntryJson.bytes(node), StandardCharsets.UTF_8);
  }
}
