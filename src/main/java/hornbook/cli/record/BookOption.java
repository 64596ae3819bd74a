package hornbook.cli.record;

import hornbook.cli.base.ArgumentValue;
import hornbook.cli.base.Arguments;
import hornbook.cli.base.ExitCode;
import hornbook.cli.base.Failure;
import hornbook.cli.base.Surroundings;
import hornbook.record.store.BookFolder;
import hornbook.record.store.BookPlace;
import hornbook.record.store.LocalDisk;
import hornbook.record.store.StoredBook;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;

/** Which book. */
final class BookOption {
  private final ArgumentValue<String> named;

  BookOption(Arguments arguments) {
    named =
        arguments.text(
            "DIR", "the folder of the book; without it HORNBOOK_BOOK, or your own data", "--book");
  }

  /** The book, whether there is one yet or not. */
  BookFolder folder(Surroundings surroundings) {
    try {
      Path path =
          named.value() == null
              ? BookPlace.of(
                  surroundings.environment(),
                  System.getProperty("os.name"),
                  System.getProperty("user.home"))
              : Path.of(named.value());
      if (Files.exists(path) && !Files.isDirectory(path)) {
        throw Failure.of(
            ExitCode.NO_INPUT, path + " is a file, not a folder", "name a folder with --book DIR");
      }
      return new BookFolder(path.toAbsolutePath());
    } catch (InvalidPathException none) {
      throw Failure.usage("no folder can have the name " + named.value(), "name another");
    }
  }

  /**
   * The book for reading.
   *
   * @throws Failure with code 66 where there is none
   */
  StoredBook book(Surroundings surroundings) {
    BookFolder folder = folder(surroundings);
    if (!Files.isDirectory(folder.root())) {
      throw Failure.of(
          ExitCode.NO_INPUT,
          "there is no daybook in " + folder.root(),
          "the first entry makes it: hornbook record add FILE --chose TECHNIQUE");
    }
    return new StoredBook(folder, new LocalDisk());
  }
}
