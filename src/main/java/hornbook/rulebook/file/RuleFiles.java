package hornbook.rulebook.file;

import java.io.IOException;
import java.nio.charset.MalformedInputException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Collections;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/** The files of a folder of rules, by name; the cases that may lie beside them are left out. */
public final class RuleFiles {
  /** The file every rule base begins with. */
  public static final String HEAD = "rulebook.yaml";

  /** The most bytes a file of rules may have. */
  public static final int LARGEST = 4 << 20;

  private static final String CASES = "cases/";

  /** May lie beside it and tell people how the rules are written. */
  private static final String ABOUT = "README.md";

  private final Map<String, String> texts;

  private RuleFiles(Map<String, String> texts) {
    this.texts = texts;
  }

  public static RuleFiles read(Path folder, List<RuleFault> faults) throws IOException {
    Map<String, String> texts = new TreeMap<>();
    if (!Files.isDirectory(folder)) {
      faults.add(
          new RuleFault(
              folder.toString(),
              0,
              "",
              RuleFault.UNREADABLE + ": there is no such folder",
              "name the folder that holds rulebook.yaml"));
      return new RuleFiles(texts);
    }
    if (!Files.isRegularFile(folder.resolve(HEAD))) {
      faults.add(
          new RuleFault(
              HEAD,
              0,
              "",
              RuleFault.UNREADABLE + ": it is missing",
              "write one with version, topics, techniques and supports"));
    }
    try (Stream<Path> walk = Files.walk(folder)) {
      for (Path file : walk.filter(Files::isRegularFile).sorted().toList()) {
        String name = folder.relativize(file).toString().replace('\\', '/');
        if (name.endsWith(".drl") || name.endsWith(".yaml")) {
          if (!name.startsWith(CASES)) {
            read(name, file, texts, faults);
          }
        } else if (!name.equals(ABOUT)) {
          faults.add(
              new RuleFault(name, 0, "", "only .drl and .yaml files belong here", "move it away"));
        }
      }
    }
    return new RuleFiles(texts);
  }

  private static void read(
      String name, Path file, Map<String, String> texts, List<RuleFault> faults)
      throws IOException {
    if (Files.size(file) > LARGEST) {
      faults.add(
          new RuleFault(
              name,
              0,
              "",
              RuleFault.UNREADABLE + ": more than " + LARGEST + " bytes",
              "move it away, or split it into smaller files"));
      return;
    }
    try {
      texts.put(name, Files.readString(file).replace("\r\n", "\n"));
    } catch (MalformedInputException noText) {
      faults.add(new RuleFault(name, 0, "", "the file is no text in UTF-8", "save it as UTF-8"));
    }
  }

  public Map<String, String> texts() {
    return Collections.unmodifiableMap(texts);
  }

  public String text(String name) {
    return texts.getOrDefault(name, "");
  }

  /** Names and contents of all files: two folders with the same digest hold the same rules. */
  public String digest() {
    try {
      MessageDigest sha = MessageDigest.getInstance("SHA-256");
      texts.forEach(
          (name, text) -> {
            sha.update(name.getBytes(StandardCharsets.UTF_8));
            sha.update((byte) 0);
            sha.update(text.getBytes(StandardCharsets.UTF_8));
            sha.update((byte) 0);
          });
      return "sha256:" + HexFormat.of().formatHex(sha.digest());
    } catch (NoSuchAlgorithmException never) {
      throw new IllegalStateException(never);
    }
  }

  /** The same over this digest and another. */
  public String digestUpon(String other) {
    Map<String, String> both = new TreeMap<>();
    both.put("base", other);
    both.put("own", digest());
    return new RuleFiles(both).digest();
  }
}
