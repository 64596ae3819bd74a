package hornbook.cli.file;

import hornbook.assessment.tree.FileText;
import hornbook.assessment.tree.Nearest;
import hornbook.cli.base.ExitCode;
import hornbook.cli.base.Failure;
import hornbook.cli.base.ScreenSafe;
import hornbook.cli.base.Surroundings;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** Reads the bytes of a file the user named, or of standard input. */
public final class InputFile {
  /** Stands for standard input. */
  public static final String STANDARD_INPUT = "-";

  private InputFile() {}

  /** An assessment; where there is none, it tells how to begin one. */
  public static byte[] assessment(String name, Surroundings surroundings) {
    return read(name, "write a blank one with: hornbook new --output " + name, surroundings);
  }

  /**
   * All bytes, but never more than one beyond the largest file the reader takes.
   *
   * @param otherwise what to do where there is no such file, or null
   * @throws Failure with code 66 when there is nothing to read
   */
  public static byte[] read(String name, String otherwise, Surroundings surroundings) {
    try {
      if (name.equals(STANDARD_INPUT)) {
        return surroundings.in().readNBytes(FileText.LARGEST + 1);
      }
      Path file = Path.of(name);
      if (Files.isDirectory(file)) {
        throw failure(name + " is a folder, not a file", "name a file in it" + example(file));
      }
      try (InputStream in = Files.newInputStream(file)) {
        return in.readNBytes(FileText.LARGEST + 1);
      }
    } catch (InvalidPathException | NoSuchFileException missing) {
      throw failure("there is no file " + name, lookedFor(name, otherwise));
    } catch (AccessDeniedException denied) {
      throw failure(
          name + " cannot be read: this user has no right to", "allow this user to read it");
    } catch (IOException unreadable) {
      throw unreadable(name);
    }
  }

  /**
   * A file opened to be read piece by piece.
   *
   * @param size in bytes; 0 where nobody can know
   */
  public record Opened(InputStream stream, long size) {}

  /**
   * Opens a file, or standard input.
   *
   * @throws Failure with code 66 when there is nothing to read
   */
  public static Opened open(String name, Surroundings surroundings) {
    try {
      if (name.equals(STANDARD_INPUT)) {
        return new Opened(surroundings.in(), 0);
      }
      Path file = Path.of(name);
      if (Files.isDirectory(file)) {
        throw failure(name + " is a folder, not a file", "name a file in it");
      }
      return new Opened(Files.newInputStream(file), Files.size(file));
    } catch (InvalidPathException | NoSuchFileException missing) {
      throw failure("there is no file " + name, lookedFor(name, null));
    } catch (AccessDeniedException denied) {
      throw failure(
          name + " cannot be read: this user has no right to", "allow this user to read it");
    } catch (IOException unreadable) {
      throw unreadable(name);
    }
  }

  /** It cannot be read, for whatever reason. */
  public static Failure unreadable(String name) {
    return failure(name + " cannot be read", "check that it opens in another program");
  }

  /** How the user knows it: by its name, or as standard input. */
  public static String shown(String name) {
    return name.equals(STANDARD_INPUT) ? "standard input" : ScreenSafe.of(name);
  }

  private static Failure failure(String what, String then) {
    return Failure.of(ExitCode.NO_INPUT, what, then);
  }

  private static String lookedFor(String name, String otherwise) {
    try {
      Path file = Path.of(name).toAbsolutePath();
      Path folder = file.getParent();
      if (folder == null || !Files.isDirectory(folder)) {
        return "there is no folder " + folder + " either";
      }
      String nearest = Nearest.of(file.getFileName().toString(), names(folder));
      Path shown = nearest == null ? null : Path.of(name).resolveSibling(nearest);
      return shown == null
          ? "looked in " + folder + (otherwise == null ? "" : "; " + otherwise)
          : "nearest: " + shown;
    } catch (InvalidPathException noName) {
      return "no file can have such a name";
    }
  }

  private static String example(Path folder) {
    return names(folder).stream()
        .filter(one -> one.endsWith(".yaml") || one.endsWith(".json"))
        .findFirst()
        .map(one -> ", such as " + folder.resolve(one))
        .orElse("");
  }

  private static List<String> names(Path folder) {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(one -> one.getFileName().toString()).sorted().toList();
    } catch (IOException closed) {
      return List.of();
    }
  }
}
