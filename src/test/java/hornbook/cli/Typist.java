package hornbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.pty4j.PtyProcess;
import com.pty4j.PtyProcessBuilder;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.TimeUnit;

/** Sits at a terminal of its own, with the packaged program running in it. */
final class Typist implements AutoCloseable {
  static final String CTRL_C = "\u0003";
  static final String CTRL_D = "\u0004";

  private static final long PATIENCE_MS = 60_000;

  /** A terminal gets its size a moment after it was opened. */
  private static final String ONCE_SIZED =
      "while [ \"$(stty size)\" = '0 0' ]; do sleep 0.02; done; exec \"$@\"";

  private final PtyProcess process;
  private final StringBuilder screen = new StringBuilder();
  private final Thread eyes;
  private int seen;

  private Typist(PtyProcess process) {
    this.process = process;
    this.eyes = new Thread(this::watch, "eyes");
    eyes.setDaemon(true);
    eyes.start();
  }

  static Typist at(Path directory, String... arguments) throws IOException {
    return at(directory, 80, Map.of(), arguments);
  }

  /** At a terminal with another program in it. */
  static Typist of(Path directory, String... program) throws IOException {
    Map<String, String> environment = new HashMap<>(System.getenv());
    environment.put("TERM", "xterm");
    return new Typist(
        new PtyProcessBuilder(program)
            .setDirectory(directory.toString())
            .setEnvironment(environment)
            .setInitialColumns(80)
            .setInitialRows(50)
            .start());
  }

  /** At a terminal of so many columns, with a pager of its own or other settings. */
  static Typist at(Path directory, int columns, Map<String, String> settings, String... arguments)
      throws IOException {
    List<String> command = new ArrayList<>(List.of("sh", "-c", ONCE_SIZED, "sh"));
    command.add(Program.HOME.resolve("bin/hornbook").toString());
    command.addAll(List.of(arguments));
    Map<String, String> environment = new HashMap<>(System.getenv());
    environment.put("TERM", "xterm");
    environment.put("HORNBOOK_ARCHIVE", "off");
    environment.keySet().removeAll(Set.of("COLUMNS", "LINES", "PAGER", "LESS", "NO_COLOR"));
    environment.putAll(settings);
    return new Typist(
        new PtyProcessBuilder(command.toArray(String[]::new))
            .setDirectory(directory.toString())
            .setEnvironment(environment)
            .setInitialColumns(columns)
            .setInitialRows(50)
            .start());
  }

  private void watch() {
    byte[] some = new byte[4096];
    try (InputStream from = process.getInputStream()) {
      for (int read = from.read(some); read >= 0; read = from.read(some)) {
        synchronized (screen) {
          screen.append(new String(some, 0, read, StandardCharsets.UTF_8));
          screen.notifyAll();
        }
      }
    } catch (IOException closed) {
      // The terminal went away with the program.
      return;
    }
  }

  /** Waits until this is shown, after what was waited for before, and a prompt behind it. */
  Typist sees(String words) throws InterruptedException {
    long until = System.currentTimeMillis() + PATIENCE_MS;
    synchronized (screen) {
      int at = screen.indexOf(words, seen);
      while (at < 0 && System.currentTimeMillis() < until) {
        screen.wait(100);
        at = screen.indexOf(words, seen);
      }
      assertThat(at).as("%s on the screen:%n%s", words, screen).isNotNegative();
      seen = at + words.length();
    }
    return this;
  }

  Typist asked(String words) throws InterruptedException {
    return sees(words).sees("> ");
  }

  /** What stands between the last prompt waited for and the one before it. */
  String lastQuestion() {
    synchronized (screen) {
      String shown = screen.substring(0, seen - 1);
      int before = shown.lastIndexOf("> ");
      return shown.substring(Math.max(0, before));
    }
  }

  Typist types(String keys) throws IOException {
    OutputStream to = process.getOutputStream();
    to.write(keys.getBytes(StandardCharsets.UTF_8));
    to.flush();
    return this;
  }

  Typist answers(String line) throws IOException {
    return types(line + "\r");
  }

  void endsWith(int code) throws InterruptedException {
    assertThat(process.waitFor(PATIENCE_MS, TimeUnit.MILLISECONDS)).as(screen()).isTrue();
    eyes.join(PATIENCE_MS);
    assertThat(process.exitValue()).as(screen()).isEqualTo(code);
  }

  String screen() {
    synchronized (screen) {
      return screen.toString();
    }
  }

  @Override
  public void close() {
    process.destroyForcibly();
  }
}
