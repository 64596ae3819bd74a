package hornbook.record.store;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Makes a book where there is none. */
final class BookOpening {
  private static final String README =
      """
      A daybook of farriery, written by the program Hornbook.

      Every folder with a number is one entry, in the order they were written. In it:

        entry.json   the visit: the assessment, the advice as it was given, what was
                     chosen and why, what was done. Plain text (JSON, UTF-8).
        photos       pictures, if any
        SHA256SUMS   digests of these files: "sha256sum -c SHA256SUMS" checks them

      Nothing in an entry is changed once it is written. A mistake is corrected by a
      later entry that names it under "corrects". "previous" is the SHA-256 of
      the entry.json before, so an entry that is altered, taken out or put in shows;
      last.sha256 tells which entry was the last.

      To keep the book, copy the whole folder. lock, .index and .writing-... are no part of it.
      """;

  private final BookFolder book;
  private final Disk disk;

  BookOpening(BookFolder book, Disk disk) {
    this.book = book;
    this.disk = disk;
  }

  /** Makes the folder and the file that says what it is, unless they are there. */
  void open() throws IOException {
    if (!Files.isDirectory(book.root())) {
      try {
        disk.makeBook(book.root());
      } catch (FileAlreadyExistsException meanwhile) {
        if (!Files.isDirectory(book.root())) {
          throw meanwhile;
        }
      }
    }
    Path readme = book.at(BookFolder.README);
    if (!Files.exists(readme)) {
      Path beside = book.at(LeftOvers.name());
      try {
        disk.write(beside, README.getBytes(StandardCharsets.UTF_8));
        disk.replace(beside, readme);
      } finally {
        disk.delete(beside);
      }
    }
  }
}
