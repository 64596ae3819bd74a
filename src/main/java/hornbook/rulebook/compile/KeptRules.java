package hornbook.rulebook.compile;

import hornbook.rulebook.Rulebook;
import hornbook.rulebook.file.RuleFiles;
import hornbook.rulebook.load.CatalogueReader;
import hornbook.rulebook.load.CatalogueWriter;
import hornbook.rulebook.load.ShippedRules;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
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
import java.util.List;
import java.util.stream.Stream;

/**
 * Rules that were read, kept in a folder of the user's, one file a rule base: the digest of the
 * rest, and the catalogue. What cannot be read or written is as if it had never been kept.
 */
final class KeptRules {
  private static final String ENDING = ".rules";
  private static final int MOST_KEPT = 12;
  private static final int DIGEST = 32;

  private final Path folder;
  private final Path file;

  /** For the rules in these files, under this program. */
  KeptRules(Path folder, RuleFiles rules) {
    this.folder = folder;
    String program = KeptRules.class.getPackage().getImplementationVersion();
    String under =
        String.join(
            "\n",
            String.valueOf(program),
            ShippedRules.book().digest(),
            String.valueOf(CatalogueReader.FORM));
    this.file = folder.resolve(rules.digestUpon(under).replace("sha256:", "") + ENDING);
  }

  /** What was kept; null where there is nothing, or nothing sound. */
  Rulebook read() {
    try {
      byte[] all = Files.readAllBytes(file);
      byte[] rest = Arrays.copyOfRange(all, DIGEST, all.length);
      if (!Arrays.equals(sha256(rest), Arrays.copyOf(all, DIGEST))) {
        return null;
      }
      Files.setLastModifiedTime(file, FileTime.fromMillis(System.currentTimeMillis()));
      return CatalogueReader.read(new ByteArrayInputStream(rest));
    } catch (IOException | RuntimeException nothingSound) {
      return null;
    }
  }

  /** Keeps a rule base, whole or not at all, for nobody but this user. */
  void write(Rulebook book) {
    Path part = null;
    try {
      ByteArrayOutputStream rest = new ByteArrayOutputStream();
      CatalogueWriter.write(book, rest);
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
