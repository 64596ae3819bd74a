package hornbook.record.store;

import hornbook.record.Entry;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Reads the file of an entry: never through a link, and never more than an entry can be. */
final class EntryReader {
  /** The most bytes the file of an entry may have. */
  static final long LARGEST = 64L << 20;

  private EntryReader() {}

  /** The bytes; null where there is no such file of its own. */
  static byte[] bytes(BookFolder book, int number) throws IOException {
    Path file = book.entryFile(number);
    boolean there = BookFolder.folder(book.entry(number)) && BookFolder.plain(file);
    return there && Files.size(file) <= LARGEST ? Files.readAllBytes(file) : null;
  }

  /** The entry; null where its file is none. */
  static Entry entry(BookFolder book, int number) throws IOException {
    byte[] bytes = bytes(book, number);
    return bytes == null ? null : EntryJson.entry(bytes);
  }
}
