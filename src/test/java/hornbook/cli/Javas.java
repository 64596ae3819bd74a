package hornbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Properties;
import java.util.TreeMap;
import java.util.stream.Stream;

/** The Java installations of this machine that the program has to run on. */
final class Javas {
  private static final int OLDEST = 17;
  private static final Path USUAL_PLACE = Path.of("/usr/lib/jvm");

  private Javas() {}

  /** One of each version: the one that runs the tests, and those in the usual place. */
  static List<Path> found() throws IOException {
    Map<String, Path> byVersion = new TreeMap<>();
    byVersion.put(Runtime.version().feature() + "", Path.of(System.getProperty("java.home")));
    if (Files.isDirectory(USUAL_PLACE)) {
      try (Stream<Path> installed = Files.list(USUAL_PLACE)) {
        for (Path java :
            installed.filter(one -> Files.isExecutable(one.resolve("bin/java"))).toList()) {
          String version = version(java.resolve("release"));
          if (!version.isEmpty() && Integer.parseInt(version) >= OLDEST) {
            byVersion.putIfAbsent(version, java);
          }
        }
      }
    }
    return List.copyOf(byVersion.values());
  }

  /** The number before the first full stop, or an empty text. */
  private static String version(Path release) throws IOException {
    Properties stated = new Properties();
    if (Files.isReadable(release)) {
      stated.load(new java.io.StringReader(Files.readString(release)));
    }
    return stated.getProperty("JAVA_VERSION", "").replace("\"", "").replaceAll("\\D.*", "");
  }

  /** The archive that the launcher has made in the background, once it is whole. */
  static Path awaitArchive(Path folder) throws Exception {
    Instant end = Instant.now().plus(Duration.ofMinutes(2));
    while (Instant.now().isBefore(end)) {
      Optional<Path> archive = archive(folder);
      if (archive.isPresent()) {
        return archive.get();
      }
      Thread.sleep(100);
    }
    assertThat(folder).isDirectoryContaining("glob:**.{jsa,aot}");
    throw new IllegalStateException();
  }

  private static Optional<Path> archive(Path folder) throws IOException {
    if (!Files.isDirectory(folder)) {
      return Optional.empty();
    }
    try (Stream<Path> listed = Files.list(folder)) {
      List<Path> files = listed.toList();
      boolean busy = files.stream().anyMatch(one -> one.toString().endsWith(".lock"));
      return busy
          ? Optional.empty()
          : files.stream().filter(one -> one.toString().matches(".*\\.(jsa|aot)")).findFirst();
    }
  }
}
