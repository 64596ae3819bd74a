package hornbook.cli.base;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;

/**
 * What the program meets when it is started: the three streams, the environment, the folder it lies
 * in, and the rules.
 *
 * @param screen what standard output is shown on
 * @param home the program's folder, with {@code cases} and {@code rules} in it; null when unknown
 */
public record Surroundings(
    InputStream in,
    OutputStream out,
    PrintStream err,
    Map<String, String> environment,
    Screen screen,
    Path home,
    RuleSource rules) {

  /** Those of this process; the launcher tells what only a shell can see. */
  public static Surroundings ofProcess(RuleSource rules) {
    String home = System.getProperty("hornbook.home");
    return new Surroundings(
        System.in,
        new FileOutputStream(FileDescriptor.out),
        new PrintStream(new FileOutputStream(FileDescriptor.err), true, StandardCharsets.UTF_8),
        System.getenv(),
        Screen.ofProcess(System.getenv()),
        home == null ? null : Path.of(home),
        rules);
  }

  /** Nothing to read, nothing shown: for a program that runs commands by itself. */
  public static Surroundings silent(Path home, RuleSource rules) {
    OutputStream nowhere = OutputStream.nullOutputStream();
    return new Surroundings(
        InputStream.nullInputStream(),
        nowhere,
        new PrintStream(nowhere),
        Map.of(),
        Screen.NONE,
        home,
        rules);
  }

  /** Whether standard output is a terminal. */
  public boolean terminal() {
    return screen.terminal();
  }

  /** The same, with what is longer than the screen written as it comes. */
  public Surroundings unpaged() {
    return new Surroundings(in, out, err, environment, screen.unpaged(), home, rules);
  }

  /** Whether standard output takes colour: a terminal that can, and a user who wants it. */
  public boolean colour() {
    return terminal()
        && environment.getOrDefault("NO_COLOR", "").isEmpty()
        && !environment.getOrDefault("TERM", "").equals("dumb");
  }

  /**
   * Writes a result to standard output. A reader that has gone away, as {@code head} does, wants no
   * more and is no failure.
   */
  public void print(String result) {
    print(result.getBytes(StandardCharsets.UTF_8));
  }

  /** As {@link #print}; what is longer than the screen is shown in a pager. */
  public void page(String result) {
    try {
      page(to -> to.write(result.getBytes(StandardCharsets.UTF_8)));
    } catch (IOException never) {
      throw new UncheckedIOException(never);
    }
  }

  /** As {@link #stream}; what is longer than the screen is shown in a pager. */
  public void page(Writing result) throws IOException {
    Pager pager = Pager.of(this);
    if (pager == null) {
      stream(result);
      return;
    }
    try {
      written(result, pager);
    } finally {
      written(to -> pager.end(), out);
    }
  }

  /** The same for what is no text. */
  public void print(byte[] result) {
    try {
      stream(to -> to.write(result));
    } catch (IOException never) {
      throw new UncheckedIOException(never);
    }
  }

  /**
   * As {@link #print}, for a result that is never all in memory.
   *
   * @throws IOException what went wrong while it was made, not while it was written
   */
  public void stream(Writing result) throws IOException {
    written(result, out);
  }

  private static void written(Writing result, OutputStream screen) throws IOException {
    try {
      OutputStream to = new Outlet(screen);
      result.to(to);
      to.flush();
    } catch (Outlet.Unwritten unwritten) {
      String reason = String.valueOf(unwritten.getMessage());
      if (!reason.toLowerCase(Locale.ROOT).contains("pipe")) {
        throw Failure.of(
            ExitCode.CANNOT_WRITE,
            "standard output cannot be written: " + reason,
            "write to a file elsewhere with --output FILE");
      }
    }
  }
}
