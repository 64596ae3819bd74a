package hornbook.report.page;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.io.Writer;

/** JSON as text, on many lines, the last one ended. */
public final class JsonText {
  /** Makes generators; closing one leaves what it writes to open. */
  public static final JsonFactory JSON =
      JsonFactory.builder().disable(StreamWriteFeature.AUTO_CLOSE_TARGET).build();

  private JsonText() {}

  /** What writes the value. */
  public interface Body {
    void writeTo(JsonGenerator json) throws IOException;
  }

  public static String of(Body body) {
    StringWriter text = new StringWriter();
    try (JsonGenerator json = pretty(text)) {
      body.writeTo(json);
    } catch (IOException never) {
      throw new UncheckedIOException(never);
    }
    return text.append('\n').toString();
  }

  /** A field that holds a list of texts. */
  public static void texts(JsonGenerator json, String name, Iterable<String> texts)
      throws IOException {
    json.writeArrayFieldStart(name);
    for (String text : texts) {
      json.writeString(text);
    }
    json.writeEndArray();
  }

  /** Where an object may be written on many lines; closing it leaves the writer open. */
  public static JsonGenerator pretty(Writer to) throws IOException {
    return pretty(JSON.createGenerator(to));
  }

  /** The same generator, set to write on many lines. */
  public static JsonGenerator pretty(JsonGenerator json) {
    DefaultIndenter lines = new DefaultIndenter("  ", "\n");
    DefaultPrettyPrinter printer = new DefaultPrettyPrinter();
    printer.indentObjectsWith(lines);
    printer.indentArraysWith(lines);
    return json.setPrettyPrinter(printer);
  }
}
