package hornbook.assessment.tree;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CoderResult;
import java.nio.charset.StandardCharsets;
import org.snakeyaml.engine.v2.scanner.StreamReader;

/** The bytes of a file as text: UTF-8, with or without a byte order mark, not too much of it. */
public final class FileText {
  /** The most bytes a file may have. */
  public static final int LARGEST = 4 << 20;

  private static final char BYTE_ORDER_MARK = '\ufeff';
  private static final String WANTED = "text in UTF-8";

  private FileText() {}

  /**
   * @throws Unreadable when the bytes are no text
   */
  static String of(byte[] bytes, String name, String wanted) {
    if (bytes.length > FileText.LARGEST) {
      throw fault(name, "", "more text than that", "up to " + FileText.LARGEST + " bytes");
    }
    if (startsWith(bytes, 0xff, 0xfe) || startsWith(bytes, 0xfe, 0xff)) {
      throw fault(name, "", "a file saved as UTF-16", WANTED + ": save it again as UTF-8");
    }
    if (plain(bytes)) {
      String text = new String(bytes, StandardCharsets.US_ASCII);
      if (!text.isBlank()) {
        return text;
      }
    }
    CharBuffer chars = CharBuffer.allocate(bytes.length);
    CoderResult result =
        StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes), chars, true);
    chars.flip();
    if (chars.length() > 0 && chars.charAt(0) == BYTE_ORDER_MARK) {
      chars.get();
    }
    String text = chars.toString();
    refuseControls(text, name);
    if (result.isError()) {
      throw fault(name, text, "bytes that are no text", WANTED);
    }
    if (text.isBlank()) {
      throw fault(name, "", "an empty file", wanted);
    }
    return text;
  }

  /** Whether all of it is the usual letters, digits, signs and ends of lines. */
  private static boolean plain(byte[] bytes) {
    for (byte one : bytes) {
      if ((one < ' ' || one > '~') && one != '\n' && one != '\r' && one != '\t') {
        return false;
      }
    }
    return true;
  }

  private static void refuseControls(String text, String name) {
    for (int i = 0; i < text.length(); i += Character.charCount(text.codePointAt(i))) {
      int point = text.codePointAt(i);
      if (!StreamReader.isPrintable(point)) {
        String found = String.format("the control character U+%04X", point);
        throw fault(name, text.substring(0, i), found, WANTED);
      }
    }
  }

  private static boolean startsWith(byte[] bytes, int first, int second) {
    return bytes.length > 1 && (bytes[0] & 0xff) == first && (bytes[1] & 0xff) == second;
  }

  /** A fault right behind some text. */
  private static Unreadable fault(String name, String before, String found, String allowed) {
    int line = 1 + (int) before.chars().filter(c -> c == '\n').count();
    int column = before.length() - before.lastIndexOf('\n');
    return new Unreadable(Fault.at(new Place(name, line, column), "", found, allowed));
  }

  /** Whether a code point can be shown in a line of text without upsetting the line. */
  public static boolean printable(int point) {
    boolean control = Character.isISOControl(point);
    boolean breaksOrTurns =
        point >= 0x2028 && point <= 0x202e || point >= 0x2066 && point <= 0x2069;
    boolean half = Character.getType(point) == Character.SURROGATE;
    boolean noCharacter = point == 0xfeff || point == 0xfffe || point == 0xffff;
    return !control && !breaksOrTurns && !half && !noCharacter;
  }
}
