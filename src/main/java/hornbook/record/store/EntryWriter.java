package hornbook.record.store;

import com.fasterxml.jackson.databind.JsonNode;
import hornbook.record.Digest;
import hornbook.record.Entry;
import hornbook.record.EntryLine;
import hornbook.record.NewEntry;
import hornbook.record.Photo;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;

/**
 * Writes entries: aside, with all that belongs to them, then into their place at one stroke. What
 * is stopped on the way leaves the book as it was, and what is in its place stays.
 */
public final class EntryWriter {
  private static final Duration WAIT = Duration.ofSeconds(20);
  private static final int MOST_TRIES = 10_000;

  private final BookFolder book;
  private final Disk disk;
  private final Duration patience;

  public EntryWriter(BookFolder book, Disk disk) {
    this(book, disk, WAIT);
  }

  /**
   * @param patience how long to wait for another writer
   */
  EntryWriter(BookFolder book, Disk disk, Duration patience) {
    this.book = book;
    this.disk = disk;
    this.patience = patience;
  }

  /**
   * Writes an entry behind the last.
   *
   * @param photos files to be copied in
   * @throws IOException when it cannot be written; then it is not in the book
   */
  public Written add(NewEntry entry, List<Path> photos) throws IOException {
    new BookOpening(book, disk).open();
    try (BookLock lock = BookLock.take(book.at(BookFolder.LOCK), patience)) {
      if (lock.held()) {
        new LeftOvers(book, disk).sweep();
      }
      return addUnlocked(entry, photos);
    }
  }

  /** The same where nothing holds others back: a number that is taken meanwhile is left to them. */
  Written addUnlocked(NewEntry entry, List<Path> photos) throws IOException {
    for (int tries = 0; ; tries++) {
      try {
        return written(entry, photos);
      } catch (FileAlreadyExistsException | NoSuchFileException overtaken) {
        // Another took the number, or swept what lay aside.
        boolean ours = Path.of(overtaken.getFile()).startsWith(book.root());
        if (!ours || tries == MOST_TRIES) {
          throw overtaken;
        }
      }
    }
  }

  private Written written(NewEntry entry, List<Path> photos) throws IOException {
    Path aside = book.at(LeftOvers.name());
    disk.makeFolder(aside);
    try {
      return placed(entry, photos, aside);
    } finally {
      try {
        disk.delete(aside);
      } catch (IOException stays) {
        // It is no part of the book, and the next writer sweeps it away.
      }
    }
  }

  private Written placed(NewEntry entry, List<Path> photos, Path aside) throws IOException {
    Tail tail = Tail.of(book);
    if (tail.number() >= BookFolder.HIGHEST) {
      throw new IOException("the book has no numbers left");
    }
    List<Photo> kept = photos(photos, aside);
    int number = tail.number() + 1;
    JsonNode content = entry.node(number, tail.digest(), kept);
    byte[] bytes = EntryJson.bytes(content);
    String digest = Digest.of(bytes);
    disk.write(aside.resolve(BookFolder.ENTRY), bytes);
    disk.write(
        aside.resolve(BookFolder.SUMS), Sums.of(digest, kept).getBytes(StandardCharsets.UTF_8));
    disk.force(aside);
    disk.place(aside, book.entry(number));
    disk.force(book.root());
    Entry written = new Entry(digest, content);
    after(written);
    return new Written(written, book.entryFile(number));
  }

  /** The entry is in the book: what follows only helps to find it, and to miss it. */
  private void after(Entry written) {
    try {
      BookFolder.Last noted = book.last();
      if (noted == null || noted.number() < written.number()) {
        note(written);
      }
      Index.of(book, disk).add(EntryLine.of(written));
    } catch (IOException unnoted) {
      // The next entry notes it.
    }
  }

  private void note(Entry written) throws IOException {
    Path beside = book.at(LeftOvers.name());
    String line = BookFolder.lastLine(written.number(), written.digest());
    try {
      disk.write(beside, line.getBytes(StandardCharsets.US_ASCII));
      disk.replace(beside, book.at(BookFolder.LAST));
      disk.force(book.root());
    } finally {
      disk.delete(beside);
    }
  }

  private List<Photo> photos(List<Path> photos, Path aside) throws IOException {
    List<Photo> kept = new ArrayList<>();
    if (photos.isEmpty()) {
      return kept;
    }
    Path folder = aside.resolve(BookFolder.PHOTOS);
    disk.makeFolder(folder);
    for (Path photo : photos) {
      Path coming = folder.resolve("coming");
      String digest = disk.copy(photo, coming);
      String name = Digest.digits(digest) + PhotoName.ending(photo);
      Path place = folder.resolve(name);
      if (Files.exists(place)) {
        disk.delete(coming);
      } else {
        disk.replace(coming, place);
        kept.add(new Photo(BookFolder.PHOTOS + "/" + name, digest, photo.getFileName().toString()));
      }
    }
    disk.force(folder);
    return kept;
  }
}
