package hornbook.cli.file;

import hornbook.cli.base.ExitCode;
import hornbook.cli.base.Failure;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;

/** A folder the user asked for, made where there is none. */
public final class ResultFolder {
  private final Path folder;

  private ResultFolder(Path folder) {
    this.folder = folder;
  }

  public static ResultFolder of(String name) {
    try {
      return new ResultFolder(Path.of(name)).made();
    } catch (InvalidPathException noName) {
      throw failure(name, "no folder can have such a name");
    }
  }

  /** A folder in it. */
  public ResultFolder in(String name) {
    return new ResultFolder(folder.resolve(name)).made();
  }

  private ResultFolder made() {
    try {
      Files.createDirectories(folder);
      return this;
    } catch (IOException unmade) {
      throw failure(folder.toString(), "the folder cannot be made there");
    }
  }

  /** A file in it. */
  public ResultFile file(String name) {
    return new ResultFile(folder.resolve(name).toString());
  }

  private static Failure failure(String name, String why) {
    return Failure.of(
        ExitCode.CANNOT_WRITE, "cannot write to " + name + ": " + why, "name another folder");
  }
}
