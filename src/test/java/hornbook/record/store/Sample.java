package hornbook.record.store;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import hornbook.record.NewEntry;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;

/** Made-up entries. */
final class Sample {
  static final Instant NOON = Instant.parse("2026-04-18T12:00:00Z");

  private Sample() {}

  static NewEntry entry(String horse, String done) {
    return entry(horse, done, NOON);
  }

  static NewEntry entry(String horse, String done, Instant written) {
    ObjectNode assessment = JsonNodeFactory.instance.objectNode();
    assessment.putObject("visit").put("date", "2026-04-18");
    ObjectNode advice = JsonNodeFactory.instance.objectNode();
    advice.putObject("rulebook").put("version", "1.0.0");
    JsonNode none = JsonNodeFactory.instance.nullNode();
    return new NewEntry(
        written,
        "A. Smith",
        horse,
        Map.of("left-fore", "glue-on"),
        null,
        List.of(),
        done,
        null,
        assessment,
        advice,
        none,
        JsonNodeFactory.instance.objectNode(),
        null);
  }

  /** A book of so many entries; every third has a picture. */
  static BookFolder book(Path at, int entries) throws IOException {
    BookFolder book = new BookFolder(at);
    EntryWriter writer = new EntryWriter(book, new LocalDisk());
    for (int i = 1; i <= entries; i++) {
      writer.add(entry("Tansy", "visit " + i), i % 3 == 0 ? List.of(picture(at, i)) : List.of());
    }
    return book;
  }

  private static Path picture(Path book, int i) throws IOException {
    Path picture = book.resolveSibling("hoof" + i + ".JPG");
    return Files.write(picture, new byte[] {(byte) 0xff, (byte) 0xd8, (byte) i});
  }
}
