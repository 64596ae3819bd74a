package hornbook.record.store;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.cfg.JsonNodeFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import hornbook.record.Digest;
import hornbook.record.Entry;
import java.io.IOException;
import java.nio.charset.StandardCharsets;

/** An entry as the bytes of its file: UTF-8, two blanks a level, keys as they were put. */
public final class EntryJson {
  private static final ObjectMapper JSON =
      JsonMapper.builder()
          .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
          .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
          .disable(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES)
          .build();

  private EntryJson() {}

  /** Any tree, as entries are written. */
  public static byte[] bytes(JsonNode node) {
    DefaultIndenter lines = new DefaultIndenter("  ", "\n");
    DefaultPrettyPrinter printer = new DefaultPrettyPrinter();
    printer.indentObjectsWith(lines);
    printer.indentArraysWith(lines);
    try {
      String text = JSON.writer(printer).writeValueAsString(node) + "\n";
      return text.getBytes(StandardCharsets.UTF_8);
    } catch (JsonProcessingException never) {
      throw new IllegalStateException(never);
    }
  }

  /** The tree of a file; null where it is not JSON, or no object. */
  public static JsonNode tree(byte[] bytes) {
    try {
      JsonNode node = JSON.readTree(bytes);
      return node != null && node.isObject() ? node : null;
    } catch (IOException malformed) {
      return null;
    }
  }

  /** The entry in a file; null where there is none. */
  static Entry entry(byte[] bytes) {
    JsonNode tree = tree(bytes);
    boolean ours =
        tree != null
            && Entry.FORMAT.equals(tree.path("format").asText())
            && tree.path("number").isInt();
    return ours ? new Entry(Digest.of(bytes), tree) : null;
  }
}
