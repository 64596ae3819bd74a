package hornbook.record.store;

import hornbook.record.Digest;
import hornbook.record.Entry;
import hornbook.record.Photo;
import hornbook.record.Printable;
import hornbook.record.store.BookFault.Kind;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** Holds one entry to itself: its place, its number, its digests, its pictures. */
final class EntryCheck {
  private final BookFolder book;
  private final int number;
  private final String place;
  private final List<BookFault> faults = new ArrayList<>();
  private final List<String> remarks = new ArrayList<>();
  private String digest;
  private final Entry entry;

  EntryCheck(BookFolder book, int number) throws IOException {
    this.book = book;
    this.number = number;
    this.place = BookFolder.name(number);
    this.entry = read();
    if (entry != null) {
      sums();
      photos();
      strangers();
    }
  }

  Entry entry() {
    return entry;
  }

  /** Of the bytes of its file; null where there are none. */
  String digest() {
    return digest;
  }

  List<BookFault> faults() {
    return faults;
  }

  List<String> remarks() {
    return remarks;
  }

  private Entry read() throws IOException {
    Path folder = book.entry(number);
    Path file = book.entryFile(number);
    if (!Files.exists(folder, LinkOption.NOFOLLOW_LINKS)) {
      fault(Kind.MISSING, "entry " + number + " is missing: there is no folder " + place);
      return null;
    }
    if (!BookFolder.folder(folder)) {
      fault(Kind.LINK, place + " is not a folder of the book, but a file or a link elsewhere");
      return null;
    }
    if (!Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
      fault(Kind.MISSING, "entry " + number + " is missing: there is no " + place + "/entry.json");
      return null;
    }
    byte[] bytes = EntryReader.bytes(book, number);
    if (bytes == null) {
      fault(Kind.LINK, place + "/entry.json is not a file of the book, but a link, or too large");
      return null;
    }
    digest = Digest.of(bytes);
    Entry read = EntryJson.entry(bytes);
    if (read == null) {
      fault(Kind.ALTERED, "entry " + number + " was altered: " + place + "/entry.json is no entry");
    } else if (read.number() != number) {
      fault(
          Kind.OUT_OF_ORDER,
          "entry " + read.number() + " stands out of order, in the place of entry " + number);
      return null;
    }
    return read;
  }

  private void sums() throws IOException {
    Path file = book.entry(number).resolve(BookFolder.SUMS);
    String wanted = Sums.of(digest, entry.photos().stream().filter(Photo::inPlace).toList());
    if (!Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
      fault(Kind.MISSING, place + "/SHA256SUMS is missing");
    } else if (!BookFolder.plain(file)
        || !Files.readString(file, StandardCharsets.ISO_8859_1).equals(wanted)) {
      fault(
          Kind.ALTERED,
          "entry " + number + " was altered: its files do not fit " + place + "/SHA256SUMS");
    }
  }

  private void photos() throws IOException {
    for (Photo photo : entry.photos()) {
      if (!photo.inPlace()) {
        fault(Kind.ALTERED, "entry " + number + " names a picture outside of its folder");
        continue;
      }
      Path file = book.entry(number).resolve(photo.file());
      String called = place + "/" + photo.file();
      if (!Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
        fault(Kind.MISSING, "a picture of entry " + number + " is missing: " + called);
      } else if (!BookFolder.folder(file.getParent()) || !BookFolder.plain(file)) {
        fault(Kind.LINK, called + " is not a file of the book, but a link elsewhere");
      } else if (!BookCheck.digest(file).equals(photo.digest())) {
        fault(Kind.ALTERED, "a picture of entry " + number + " was altered: " + called);
      }
    }
  }

  private void strangers() throws IOException {
    Set<String> own = new HashSet<>(Set.of(BookFolder.ENTRY, BookFolder.SUMS));
    entry.photos().forEach(photo -> own.add(photo.file()));
    List<Path> all = new ArrayList<>(within(book.entry(number)));
    Path photos = book.entry(number).resolve(BookFolder.PHOTOS);
    if (BookFolder.folder(photos) && all.remove(photos)) {
      all.addAll(within(photos));
    }
    for (Path one : all) {
      String name = book.entry(number).relativize(one).toString().replace('\\', '/');
      int copied = own.contains(name) ? 0 : Strangers.entryIn(one);
      if (copied > 0) {
        String says = place + "/" + Printable.of(name) + " holds entry " + copied + " once more";
        faults.add(new BookFault(copied, Kind.COPY, says));
      } else if (!own.contains(name)) {
        remarks.add(place + "/" + Printable.of(name) + " is not part of the book");
      }
    }
  }

  private static List<Path> within(Path folder) throws IOException {
    List<Path> all = new ArrayList<>();
    try (DirectoryStream<Path> files = Files.newDirectoryStream(folder)) {
      files.forEach(all::add);
    }
    return all;
  }

  private void fault(Kind kind, String says) {
    faults.add(new BookFault(number, kind, says));
  }
}
