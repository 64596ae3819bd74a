package hornbook.cli.stream;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.List;

/** Parts a stream into lines, and gathers them into handfuls that are worth a thread's while. */
final class LineReader {
  private static final int MOST_LINES = 32;
  private static final int MOST_BYTES = 1 << 17;

  private final InputStream from;
  private final int longest;
  private final byte[] buffer = new byte[1 << 16];
  private int at;
  private int end;
  private long number;
  private long read;

  /**
   * @param longest the most bytes that are kept of a line
   */
  LineReader(InputStream from, int longest) {
    this.from = from;
    this.longest = longest;
  }

  /** How many bytes were read so far. */
  long read() {
    return read;
  }

  /**
   * The next lines that are not empty; none at the end. Never waits for more while it has some: who
   * writes a line and waits for the answer gets it.
   */
  List<Line> next() throws IOException {
    List<Line> lines = new ArrayList<>(MOST_LINES);
    int size = 0;
    while (lines.size() < MOST_LINES && size < MOST_BYTES) {
      if (!lines.isEmpty() && !wholeLineHere() && from.available() <= 0) {
        break;
      }
      byte[] line = line();
      if (line == null) {
        break;
      }
      number++;
      if (!blank(line)) {
        lines.add(new Line(number, line));
        size += line.length;
      }
    }
    return lines;
  }

  private boolean wholeLineHere() {
    for (int next = at; next < end; next++) {
      if (buffer[next] == '\n') {
        return true;
      }
    }
    return false;
  }

  /** The bytes up to the next line end, or null at the end of the stream. */
  private byte[] line() throws IOException {
    ByteArrayOutputStream line = null;
    while (at < end || fill()) {
      int begin = at;
      while (at < end && buffer[at] != '\n') {
        at++;
      }
      boolean whole = at < end;
      if (line == null) {
        line = new ByteArrayOutputStream(at - begin);
      }
      line.write(buffer, begin, Math.min(at - begin, longest - line.size()));
      if (whole) {
        at++;
        break;
      }
    }
    return line == null ? null : line.toByteArray();
  }

  private boolean fill() throws IOException {
    at = 0;
    end = Math.max(0, from.read(buffer));
    read += end;
    return end > 0;
  }

  private static boolean blank(byte[] line) {
    for (byte one : line) {
      if (one != ' ' && one != '\t' && one != '\r') {
        return false;
      }
    }
    return true;
  }
}
