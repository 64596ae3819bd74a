package hornbook.cli.file;

import hornbook.cli.base.ExitCode;
import hornbook.cli.base.Failure;
import hornbook.cli.base.Writing;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFileAttributeView;

/** A file the user asked for: written whole, or not touched at all. */
public final class ResultFile {
  private static final int MOST_LINKS = 40;

  private final String name;

  public ResultFile(String name) {
    this.name = name;
  }

  /** Writes the file, or puts the new one in the place of an old one. */
  public void write(String result) {
    write(result.getBytes(StandardCharsets.UTF_8));
  }

  /** The same for what is no text. */
  public void write(byte[] result) {
    write(out -> out.write(result), true);
  }

  /** Writes the file where there is none yet. */
  public void writeNew(String result) {
    byte[] bytes = result.getBytes(StandardCharsets.UTF_8);
    write(out -> out.write(bytes), false);
  }

  /** As {@link #write(String)}, for a result that is never all in memory. */
  public void write(Writing result) {
    write(result, true);
  }

  /**
   * Refuses to put a result in the place of a file that is none.
   *
   * @param force whether the user has said that it may be lost
   */
  public void spareOwn(boolean force) {
    try {
      Path file = followed(Path.of(name));
      if (!force && Files.isRegularFile(file) && Files.isReadable(file) && !ResultMark.in(file)) {
        throw failure(
            "the file exists, and hornbook did not write it",
            "name another file, or replace it with --force");
      }
    } catch (InvalidPathException | IOException told) {
      // Writing it comes upon the same, and tells.
    }
  }

  private void write(Writing result, boolean replace) {
    try {
      Path file = followed(Path.of(name));
      if (Files.isDirectory(file)) {
        throw failure("it is a folder", "name a file in it");
      }
      boolean there = Files.exists(file);
      if (there && !Files.isRegularFile(file)) {
        put(result, file);
      } else if (there && !replace) {
        throw failure(
            "there is such a file already", "name another file, or remove this one first");
      } else if (there && !Files.isWritable(file)) {
        throw failure("the file is write-protected", "name another file, or lift the protection");
      } else {
        putInPlace(there ? file.toRealPath() : file.toAbsolutePath(), result);
      }
    } catch (InvalidPathException noName) {
      throw failure("no file can have such a name", "name another file");
    } catch (NoSuchFileException missing) {
      throw noFolder();
    } catch (AccessDeniedException denied) {
      throw failure("this user may not write there", "name a file in a folder of your own");
    } catch (FileSystemException refused) {
      String reason = refused.getReason() == null ? "the system refuses" : refused.getReason();
      throw failure(reason, "name a file elsewhere");
    } catch (IOException broken) {
      throw failure(String.valueOf(broken.getMessage()), "name a file elsewhere");
    }
  }

  /** A link that leads nowhere is told with where it leads. */
  private Failure noFolder() {
    Path link = Path.of(name);
    if (!Files.isSymbolicLink(link)) {
      return failure("there is no such folder", "make the folder first");
    }
    try {
      return failure(
          "it is a link to " + Files.readSymbolicLink(link) + ", and there is no such folder",
          "make the folder first, or name another file");
    } catch (IOException gone) {
      return failure("there is no such folder", "make the folder first");
    }
  }

  /** What a link leads to where nothing is yet: the link stays a link. */
  private Path followed(Path file) throws IOException {
    Path at = file;
    for (int links = 0; Files.isSymbolicLink(at) && !Files.exists(at); links++) {
      if (links == MOST_LINKS) {
        throw failure("the link points back to itself", "name another file");
      }
      at = at.resolveSibling(Files.readSymbolicLink(at));
    }
    return at;
  }

  private static void put(Writing result, Path file, OpenOption... how) throws IOException {
    try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(file, how), 1 << 16)) {
      result.to(out);
    }
  }

  private static void putInPlace(Path target, Writing result) throws IOException {
    Path beside = beside(target);
    try {
      put(result, beside, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE);
      if (Files.exists(target)) {
        keepPermissions(target, beside);
      }
      move(beside, target);
    } finally {
      Files.deleteIfExists(beside);
    }
  }

  private static Path beside(Path target) throws IOException {
    for (int attempt = 0; attempt < 100; attempt++) {
      long mark = ProcessHandle.current().pid() * 100 + attempt;
      Path beside = target.resolveSibling("." + target.getFileName() + "." + mark + ".part");
      if (!Files.exists(beside)) {
        return beside;
      }
    }
    throw new FileAlreadyExistsException(target.toString(), null, "too many unfinished files");
  }

  private static void keepPermissions(Path from, Path to) throws IOException {
    PosixFileAttributeView view = Files.getFileAttributeView(to, PosixFileAttributeView.class);
    if (view != null) {
      view.setPermissions(Files.getPosixFilePermissions(from));
    }
  }

  private static void move(Path from, Path to) throws IOException {
    try {
      Files.move(from, to, StandardCopyOption.ATOMIC_MOVE);
    } catch (AtomicMoveNotSupportedException otherwise) {
      Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
    }
  }

  private Failure failure(String why, String then) {
    return Failure.of(ExitCode.CANNOT_WRITE, "cannot write " + name + ": " + why, then);
  }
}
