package hornbook.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;

/** JSON as text, on many lines, the last one ended. */
final class JsonText {
  private JsonText() {}

  /** What writes the value. */
  interface Body {
    void writeTo(JsonGenerator json) throws IOException;
  }

  static String of(Body body) {
    StringWriter text = new StringWriter();
    try (JsonGenerator json = AdviceJson.pretty(text)) {
      body.writeTo(json);
    } catch (IOException never) {
      throw new UncheckedIOException(never);
    }
    return text.append('\n').toString();
  }
}
