package hornbook.record.store;

import hornbook.record.Entry;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Files that the program did not put where they lie. */
final class Strangers {
  private Strangers() {}

  /** The number of the entry that a file is, or that a folder holds; 0 where there is none. */
  static int entryIn(Path path) throws IOException {
    Path file = BookFolder.folder(path) ? path.resolve(BookFolder.ENTRY) : path;
    if (!BookFolder.plain(file) || Files.size(file) > EntryReader.LARGEST) {
      return 0;
    }
    Entry entry = EntryJson.entry(Files.readAllBytes(file));
    return entry == null ? 0 : entry.number();
  }
}
