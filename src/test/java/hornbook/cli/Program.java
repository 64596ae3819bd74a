package hornbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** Runs the packaged program as a user would: through its launcher, in a process of its own. */
final class Program {
  /** The folder the build has put the program in. */
  static final Path HOME = Path.of(System.getProperty("hornbook.program")).toAbsolutePath();

  static final Path EXERCISES = HOME.resolve("cases/exercises");

  private static final Map<List<String>, Run> ONCE = new HashMap<>();

  /** What a run left behind. */
  record Run(int code, String out, String err) {
    /** Ended with this code, having said nothing no user should see. */
    Run ended(int expected) {
      assertThat(code).as("exit code, with standard error: %s", err).isEqualTo(expected);
      return discreet();
    }

    /** Did its work and had nothing to complain of. */
    Run done() {
      ended(0);
      assertThat(err).as("standard error").isEmpty();
      return this;
    }

    /** Ended with this code, and with nothing on standard output. */
    Run refused(int expected) {
      ended(expected);
      assertThat(out).as("standard output").isEmpty();
      assertThat(err).as("standard error").isNotBlank();
      return this;
    }

    /** No class, no exception, no place in the source shows. */
    private Run discreet() {
      assertThat(out + err)
          .doesNotContain("Exception", "Error:", "at hornbook.", ".java", "java.", "hornbook.cli")
          .doesNotContain("org.drools", "picocli.", "snakeyaml", "fasterxml");
      return this;
    }

    JsonNode json() {
      try {
        return new ObjectMapper().readTree(out);
      } catch (IOException malformed) {
        throw new UncheckedIOException(malformed);
      }
    }
  }

  private final Path home;
  private final Map<String, String> environment = new LinkedHashMap<>();
  private Path directory = HOME;
  private byte[] input = new byte[0];

  private Program(Path home) {
    this.home = home;
    environment.put("HORNBOOK_ARCHIVE", "off");
    environment.put("COLUMNS", null);
    environment.put("LINES", null);
  }

  static Run run(String... arguments) {
    return here().with(arguments);
  }

  /** What was said the first time, for whoever only reads what many want to read. */
  static Run once(String... arguments) {
    return ONCE.computeIfAbsent(List.of(arguments), key -> run(arguments));
  }

  /** The program where the build has put it. */
  static Program here() {
    return new Program(HOME);
  }

  /** A copy of the program, or a link to it. */
  static Program in(Path home) {
    return new Program(home);
  }

  Program from(Path other) {
    directory = other;
    return this;
  }

  Program environment(String name, String value) {
    environment.put(name, value);
    return this;
  }

  Program input(String text) {
    return input(text.getBytes(StandardCharsets.UTF_8));
  }

  Program input(byte[] bytes) {
    input = bytes;
    return this;
  }

  Run with(String... arguments) {
    List<String> command = new ArrayList<>();
    command.add(home.resolve("bin/hornbook").toString());
    command.addAll(List.of(arguments));
    return command(command);
  }

  /** Any command at all, such as a line for a shell. */
  Run command(List<String> command) {
    ProcessBuilder builder = new ProcessBuilder(command).directory(directory.toFile());
    environment.forEach(
        (name, value) -> {
          if (value == null) {
            builder.environment().remove(name);
          } else {
            builder.environment().put(name, value);
          }
        });
    try {
      Process process = builder.start();
      CompletableFuture<String> out = read(process.getInputStream());
      CompletableFuture<String> err = read(process.getErrorStream());
      try (OutputStream to = process.getOutputStream()) {
        to.write(input);
      } catch (IOException unread) {
        // A program that stops before it has read everything has every right to.
        assertThat(input).isNotEmpty();
      }
      assertThat(process.waitFor(2, TimeUnit.MINUTES)).as("ends by itself").isTrue();
      return new Run(process.exitValue(), out.join(), err.join());
    } catch (IOException unstarted) {
      throw new UncheckedIOException(unstarted);
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(stopped);
    }
  }

  private static CompletableFuture<String> read(InputStream from) {
    return CompletableFuture.supplyAsync(
        () -> {
          try {
            return new String(from.readAllBytes(), StandardCharsets.UTF_8);
          } catch (IOException broken) {
            throw new UncheckedIOException(broken);
          }
        });
  }

  /** A copy of the program at another place, without the start-up archive. */
  static Path copiedTo(Path target) throws IOException {
    copy(HOME, target, file -> !file.getFileName().toString().startsWith("hornbook-"));
    return target;
  }

  /** Copies a folder with those of its files that are wanted. */
  static void copy(Path from, Path target, Predicate<Path> wanted) throws IOException {
    try (Stream<Path> files = Files.walk(from)) {
      for (Path file : files.toList()) {
        Path copy = target.resolve(from.relativize(file).toString());
        if (Files.isDirectory(file)) {
          Files.createDirectories(copy);
        } else if (wanted.test(file)) {
          Files.copy(file, copy, StandardCopyOption.COPY_ATTRIBUTES);
        }
      }
    }
  }

  /** A folder of these teaching cases alone: not every mark has to look through all there are. */
  static String library(Path folder, String... names) {
    try {
      for (String name : names) {
        Files.copy(Path.of(exercise(name)), folder.resolve(name + ".yaml"));
      }
      return folder.toString();
    } catch (IOException unwritten) {
      throw new UncheckedIOException(unwritten);
    }
  }

  static String exercise(String name) {
    return EXERCISES.resolve(name + ".yaml").toString();
  }
}
