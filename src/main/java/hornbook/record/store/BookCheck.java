package hornbook.record.store;

import hornbook.record.Digest;
import hornbook.record.Entry;
import hornbook.record.Printable;
import hornbook.record.store.BookFault.Kind;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestInputStream;
import java.security.MessageDigest;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Holds every file of a book to its digest, and every entry to the one before. */
public final class BookCheck {
  private static final Set<String> OWN =
      Set.of(BookFolder.README, BookFolder.LAST, BookFolder.LOCK, BookFolder.INDEX);

  private static final int MOST_NAMED = 1000;

  private final BookFolder book;
  private final List<BookFault> faults = new ArrayList<>();
  private final List<String> remarks = new ArrayList<>();
  private final Map<Integer, String> digests = new HashMap<>();

  private BookCheck(BookFolder book) {
    this.book = book;
  }

  /** Reads everything and changes nothing. */
  public static Verified verify(BookFolder book) throws IOException {
    return new BookCheck(book).verified();
  }

  private Verified verified() throws IOException {
    int[] numbers = book.numbers();
    int highest = numbers.length == 0 ? 0 : numbers[numbers.length - 1];
    Entry before = null;
    int expected = 1;
    for (int number : numbers) {
      if (number > expected) {
        missing(expected, number - 1, "");
        before = null;
      }
      Entry entry = entry(number);
      follows(before, entry);
      before = entry;
      expected = number + 1;
    }
    last(highest);
    for (String name : book.names().stream().sorted().toList()) {
      strange(name);
    }
    faults.sort(Comparator.comparingInt(BookFault::entry));
    return new Verified(numbers.length, faults, remarks);
  }

  /** The entry, held to itself; null where it cannot stand for what comes after. */
  private Entry entry(int number) throws IOException {
    EntryCheck check = new EntryCheck(book, number);
    Entry entry = check.entry();
    faults.addAll(check.faults());
    remarks.addAll(check.remarks());
    if (check.digest() != null) {
      digests.put(number, check.digest());
    }
    return check.faults().isEmpty() ? entry : null;
  }

  private void follows(Entry before, Entry entry) {
    if (entry == null) {
      return;
    }
    if (entry.number() == 1) {
      if (entry.previous() != null) {
        fault(1, Kind.OUT_OF_ORDER, "entry 1 names an entry before it, and there can be none");
      }
      return;
    }
    if (before == null) {
      return;
    }
    if (!before.digest().equals(entry.previous())) {
      fault(
          before.number(),
          Kind.ALTERED,
          "entry "
              + before.number()
              + " is not the one that entry "
              + entry.number()
              + " was written after: one of the two was altered or changed for another");
    }
    clock(before.written(), entry);
  }

  private void clock(Instant before, Entry entry) {
    if (before != null && entry.written() != null && entry.written().isBefore(before)) {
      remarks.add(
          "entry "
              + entry.number()
              + " has an earlier time than the entry before it: a clock was set back, or two clocks differ");
    }
  }

  private void last(int highest) throws IOException {
    Path file = book.at(BookFolder.LAST);
    BookFolder.Last last = book.last();
    if (last == null) {
      if (Files.exists(file) || highest > 1) {
        String what = Files.exists(file) ? " was altered" : " is missing";
        Kind kind = Files.exists(file) ? Kind.ALTERED : Kind.MISSING;
        fault(
            0,
            kind,
            BookFolder.LAST + what + ": whether entries are missing at the end is unknown");
      }
      return;
    }
    String there = digests.get(last.number());
    boolean other = there != null && !there.equals(last.digest());
    boolean known = faults.stream().anyMatch(one -> one.entry() == last.number());
    if (digests.containsValue(last.digest()) && !last.digest().equals(there)) {
      fault(0, Kind.ALTERED, BookFolder.LAST + " gives the digest of one entry and names another");
    } else if (other && !known) {
      fault(
          last.number(),
          Kind.ALTERED,
          "entry " + last.number() + " and " + BookFolder.LAST + " differ: one was altered");
    } else {
      missing(highest + 1, last.number(), " at the end of the book");
    }
  }

  /** Each of them by its number; where it is a great many, the first stands for all. */
  private void missing(int from, int to, String where) {
    if (to - from > MOST_NAMED) {
      fault(from, Kind.MISSING, "entries " + from + " to " + to + " are missing" + where);
      return;
    }
    for (int number = from; number <= to; number++) {
      fault(number, Kind.MISSING, "entry " + number + " is missing" + where);
    }
  }

  /** What the program did not put there: an entry that has no place is told, all else let be. */
  private void strange(String name) throws IOException {
    if (OWN.contains(name) || BookFolder.number(name) > 0) {
      return;
    }
    if (name.startsWith(BookFolder.WRITING)) {
      remarks.add(Printable.of(name) + " was left by an interrupted write; it is not an entry");
      return;
    }
    int copied = Strangers.entryIn(book.at(name));
    if (copied > 0) {
      String says = Printable.of(name) + " holds entry " + copied + ", which already has its place";
      fault(copied, Kind.COPY, says);
    } else {
      remarks.add(Printable.of(name) + " is not part of the book");
    }
  }

  private void fault(int entry, Kind kind, String says) {
    faults.add(new BookFault(entry, kind, says));
  }

  /** The digest of a file, read bit by bit. */
  static String digest(Path file) throws IOException {
    MessageDigest digest = Digest.sha256();
    try (InputStream in = new DigestInputStream(Files.newInputStream(file), digest)) {
      in.transferTo(OutputStream.nullOutputStream());
    }
    return Digest.PREFIX + HexFormat.of().formatHex(digest.digest());
  }
}
