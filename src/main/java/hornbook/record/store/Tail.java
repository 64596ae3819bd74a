package hornbook.record.store;

import hornbook.record.Digest;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * What the next entry follows.
 *
 * @param number of the last entry there is or was; 0 in a book without any
 * @param digest of its bytes; null where there is none
 */
record Tail(int number, String digest) {

  /**
   * An entry that is gone keeps its number: it is missed, and no other takes its place. Its digest
   * is then the one noted; without a note, of the nothing that was found.
   */
  static Tail of(BookFolder book) throws IOException {
    int[] numbers = book.numbers();
    int there = numbers.length == 0 ? 0 : numbers[numbers.length - 1];
    BookFolder.Last noted = book.last();
    if (noted != null && noted.number() > there) {
      return new Tail(noted.number(), noted.digest());
    }
    if (there == 0) {
      return new Tail(0, null);
    }
    Path file = book.entryFile(there);
    boolean readable = BookFolder.folder(book.entry(there)) && BookFolder.plain(file);
    return new Tail(there, Digest.of(readable ? Files.readAllBytes(file) : new byte[0]));
  }
}
