package hornbook.rulebook.compile;

import hornbook.rulebook.Rulebook;
import hornbook.rulebook.file.RuleFiles;
import hornbook.rulebook.load.CatalogueReader;
import hornbook.rulebook.load.CatalogueWriter;
import hornbook.rulebook.load.ShippedRules;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * Compiled rules kept in a folder of the user's, one file a rule base: the digest of the rest, the
 * catalogue, the classes. What cannot be read or written is as if it had never been kept.
 */
final class KeptRules {
  /** What was kept. */
  record Kept(Rulebook book, Map<String, byte[]> classes) {}

  private static final String ENDING = ".rules";
  private static final int MOST_KEPT = 12;
  private static final int DIGEST = 32;

  private final Path folder;
  private final Path file;

  /** For the rules in these files, under this program and this Java. */
  KeptRules(Path folder, RuleFiles rules) {
    this.folder = folder;
    String program = KeptRules.class.getPackage().getImplementationVersion();
    String under =
        String.join(
            "\n",
            String.valueOf(program),
            ShippedRules.book().digest(),
            System.getProperty("java.runtime.version"),
            String.valueOf(CatalogueReader.FORM));
    this.file = folder.resolve(rules.digestUpon(under).replace("sha256:", "") + ENDING);
  }

  /** What was kept; null where there is nothing, or nothing sound. */
  Kept read() {
    try {
      byte[] all = Files.readAllBytes(file);
      byte[] rest = Arrays.copyOfRange(all, DIGEST, all.length);
      if (!Arrays.equals(sha256(rest), Arrays.copyOf(all, DIGEST))) {
        return null;
      }
      Files.setLastModifiedTime(file, FileTime.fromMillis(System.currentTimeMillis()));
      DataInputStream in = new DataInputStream(new ByteArrayInputStream(rest));
      Map<String, byte[]> classes = new LinkedHashMap<>();
      for (int left = in.readInt(); left > 0; left--) {
        String name = in.readUTF();
        classes.put(name, in.readNBytes(in.readInt()));
      }
      return new Kept(CatalogueReader.read(in), classes);
    } catch (IOException | RuntimeException nothingSound) {
      return null;
    }
  }

  /** Keeps what was compiled, whole or not at all, for nobody but this user. */
  void write(Rulebook book, Map<String, byte[]> classes) {
    Path part = null;
    try {
      ByteArrayOutputStream rest = new ByteArrayOutputStream();
      DataOutputStream out = new DataOutputStream(rest);
      out.writeInt(classes.size());
      for (Map.Entry<String, byte[]> one : classes.entrySet()) {
        out.writeUTF(one.getKey());
        out.writeInt(one.getValue().length);
        out.write(one.getValue());
      }
      CatalogueWriter.write(book, out);
      Files.createDirectories(folder, own("rwx------"));
      part = Files.createTempFile(folder, "", ".part", own("rw-------"));
      ByteArrayOutputStream whole = new ByteArrayOutputStream();
      whole.write(sha256(rest.toByteArray()));
      rest.writeTo(whole);
      Files.write(part, whole.toByteArray());
      Files.move(part, file, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
      clear();
    } catch (IOException | RuntimeException unkept) {
      delete(part);
    }
  }

  private FileAttribute<?>[] own(String permissions) {
    boolean posix = folder.getFileSystem().supportedFileAttributeViews().contains("posix");
    return posix
        ? new FileAttribute<?>[] {
          PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString(permissions))
        }
        : new FileAttribute<?>[0];
  }

  /** Lets go of what was not used for longest. */
  private void clear() throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      List<Path> oldest =
          files
              .filter(one -> one.toString().endsWith(ENDING))
              .sorted(Comparator.comparing(KeptRules::used).reversed())
              .skip(MOST_KEPT)
              .toList();
      oldest.forEach(KeptRules::delete);
    }
  }

  private static long used(Path file) {
    try {
      return Files.getLastModifiedTime(file).toMillis();
    } catch (IOException gone) {
      return 0;
    }
  }

  private static void delete(Path file) {
    try {
      if (file != null) {
        Files.deleteIfExists(file);
      }
    } catch (IOException stays) {
      // It will be tried again the next time something is kept.
    }
  }

  private static byte[] sha256(byte[] bytes) {
    try {
      return MessageDigest.getInstance("SHA-256").digest(bytes);
    } catch (NoSuchAlgorithmException never) {
      throw new IllegalStateException(never);
    }
  }
}
