package hornbook.rulebook.compile;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.stream.Stream;

/** Tells the build whether rules, or the classes that read them, have changed since it last ran. */
final class BuildStamp {
  private static final String STAMP = "hornbook/rulebook/compiled.stamp";

  private final Path file;
  private final String digest;

  private BuildStamp(Path file, String digest) {
    this.file = file;
    this.digest = digest;
  }

  /** Over the names and contents of all rule files and of the classes of this room. */
  static BuildStamp of(Path rules, Path classes) throws IOException {
    try {
      MessageDigest sha = MessageDigest.getInstance("SHA-256");
      add(sha, rules, "");
      add(sha, classes.resolve("hornbook/rulebook"), ".class");
      return new BuildStamp(classes.resolve(STAMP), HexFormat.of().formatHex(sha.digest()));
    } catch (NoSuchAlgorithmException never) {
      throw new IllegalStateException(never);
    }
  }

  private static void add(MessageDigest sha, Path folder, String ending) throws IOException {
    try (Stream<Path> walk = Files.walk(folder)) {
      for (Path one : walk.filter(Files::isRegularFile).sorted().toList()) {
        if (one.toString().endsWith(ending)) {
          sha.update(folder.relativize(one).toString().getBytes(StandardCharsets.UTF_8));
          sha.update((byte) 0);
          sha.update(Files.readAllBytes(one));
        }
      }
    }
  }

  boolean current() throws IOException {
    return Files.exists(file) && Files.readString(file).equals(digest);
  }

  void set() throws IOException {
    Files.writeString(file, digest);
  }
}
