package hornbook.report.pdf;

import com.openhtmltopdf.extend.FSStream;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The typefaces that go into the PDF, under an open licence and in a library of their own. */
final class Fonts {
  /** What the style sheet calls them by: {@code font:LiberationSans-Bold}. */
  static final String SCHEME = "font";

  private static final String FOLDER = "/liberation/";

  private Fonts() {}

  /**
   * The typeface of that address.
   *
   * @throws UncheckedIOException when there is none
   */
  static FSStream open(String address) {
    String name = address.substring(SCHEME.length() + 1) + ".ttf";
    return new Bytes(bytes(name));
  }

  private static byte[] bytes(String name) {
    try (InputStream font = Fonts.class.getResourceAsStream(FOLDER + name)) {
      if (font == null) {
        throw new IOException("no typeface " + name);
      }
      return font.readAllBytes();
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }

  private record Bytes(byte[] bytes) implements FSStream {
    @Override
    public InputStream getStream() {
      return new ByteArrayInputStream(bytes);
    }

    @Override
    public Reader getReader() {
      return new InputStreamReader(getStream(), StandardCharsets.UTF_8);
    }
  }
}
