package hornbook.cli.base;

import java.io.ByteArrayOutputStream;
import java.io.File;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.jline.utils.Signals;

/**
 * Standard output as a screen takes it: what fits is written as it is, what is longer goes to the
 * pager of {@code PAGER}, or else to {@code less}.
 */
final class Pager extends OutputStream {
  /**
   * Colours pass; what fits after all is not held; it stays to be read when the pager has ended.
   */
  private static final String LESS = "FRX";

  private final OutputStream screen;
  private final Screen size;
  private final String command;
  private final ByteArrayOutputStream held = new ByteArrayOutputStream();
  private int rows = 1;
  private int column;
  private Process pager;
  private OutputStream to;

  private Pager(OutputStream screen, Screen size, String command) {
    this.screen = screen;
    this.size = size;
    this.command = command;
  }

  /** The pager for these surroundings, or null where none is wanted or none is there. */
  static Pager of(Surroundings surroundings) {
    Map<String, String> environment = surroundings.environment();
    boolean dumb = environment.getOrDefault("TERM", "dumb").equals("dumb");
    if (!surroundings.screen().paged() || dumb) {
      return null;
    }
    String wanted = environment.get("PAGER");
    if (wanted != null && wanted.isBlank()) {
      return null;
    }
    for (String command : wanted == null ? List.of("less") : List.of(wanted.strip(), "less")) {
      if (found(command.split("\\s+")[0], environment.getOrDefault("PATH", ""))) {
        return new Pager(surroundings.out(), surroundings.screen(), command);
      }
    }
    return null;
  }

  private static boolean found(String program, String path) {
    if (program.indexOf('/') >= 0) {
      return Files.isExecutable(Path.of(program));
    }
    for (String folder : path.split(File.pathSeparator)) {
      if (!folder.isEmpty() && Files.isExecutable(Path.of(folder, program))) {
        return true;
      }
    }
    return false;
  }

  @Override
  public void write(int one) throws IOException {
    write(new byte[] {(byte) one}, 0, 1);
  }

  @Override
  public void write(byte[] bytes, int from, int length) throws IOException {
    if (to == null) {
      held.write(bytes, from, length);
      count(bytes, from, length);
      if (rows >= size.rows()) {
        start();
      }
    } else {
      pass(bytes, from, length);
    }
  }

  /** Counts the rows taken, a line that is too long as several. */
  private void count(byte[] bytes, int from, int length) {
    for (int i = from; i < from + length; i++) {
      boolean within = (bytes[i] & 0xc0) == 0x80;
      if (bytes[i] == '\n') {
        rows++;
        column = 0;
      } else if (!within && column++ == size.columns()) {
        rows++;
        column = 1;
      }
    }
  }

  /** Starts it; what is held, and what is still to come, goes to it. */
  private void start() throws IOException {
    ProcessBuilder builder = new ProcessBuilder("sh", "-c", command);
    builder.redirectOutput(ProcessBuilder.Redirect.INHERIT);
    builder.redirectError(ProcessBuilder.Redirect.INHERIT);
    builder.environment().putIfAbsent("LESS", LESS);
    pager = builder.start();
    to = pager.getOutputStream();
    // An interrupt at the keyboard is for the pager: it stops a search, it does not end the page.
    Signals.register("INT", () -> {});
    pass(held.toByteArray(), 0, held.size());
  }

  /** A pager that was left early is a reader that has seen enough. */
  private void pass(byte[] bytes, int from, int length) throws IOException {
    try {
      to.write(bytes, from, length);
      to.flush();
    } catch (IOException left) {
      throw new IOException("the pager closed its pipe");
    }
  }

  /** Writes what was held and fits; or waits until the user has left the pager. */
  void end() throws IOException {
    if (pager == null) {
      screen.write(held.toByteArray());
      screen.flush();
      return;
    }
    try {
      to.close();
    } catch (IOException left) {
      // It was left before it had read all: that is the user's right.
      held.reset();
    }
    try {
      pager.waitFor();
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
    }
  }
}
