package hornbook.cli.record;

import hornbook.cli.base.ExitCode;
import hornbook.cli.base.Failure;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Pictures that are to be copied in. */
final class PhotoFiles {
  private PhotoFiles() {}

  /**
   * @throws Failure where one of them cannot be read
   */
  static List<Path> of(List<String> names) {
    List<Path> files = new ArrayList<>();
    for (String name : names) {
      try {
        Path file = Path.of(name);
        if (!Files.isRegularFile(file) || !Files.isReadable(file)) {
          throw missing(name);
        }
        files.add(file);
      } catch (InvalidPathException none) {
        throw missing(name);
      }
    }
    return files;
  }

  private static Failure missing(String name) {
    return Failure.of(
        ExitCode.NO_INPUT,
        "there is no picture " + name + " that can be read",
        "nothing was written; name a file with --photo");
  }
}
