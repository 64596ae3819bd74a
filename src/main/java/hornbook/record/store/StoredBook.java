package hornbook.record.store;

import hornbook.record.Entry;
import hornbook.record.EntryLine;
import hornbook.record.store.BookProblem.Kind;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.util.List;
import java.util.Locale;

/** A daybook for reading. */
public final class StoredBook {
  private static final int SHORTEST = 4;

  private final BookFolder book;
  private final Index index;

  public StoredBook(BookFolder book, Disk disk) {
    this.book = book;
    this.index = Index.of(book, disk);
  }

  public BookFolder folder() {
    return book;
  }

  /** Whether there is such a folder. */
  public boolean there() {
    return Files.isDirectory(book.root());
  }

  /** Every entry, in the order they were written. */
  public List<EntryLine> lines() throws IOException {
    return index.lines();
  }

  /**
   * The entry known by its number, or by the first letters of its digest.
   *
   * @throws BookProblem where there is none, or more than one
   */
  public Entry entry(String name) throws IOException, BookProblem {
    int number = name.matches("\\d{1,9}") ? Integer.parseInt(name) : 0;
    boolean place = Files.exists(book.entry(number), LinkOption.NOFOLLOW_LINKS);
    if (number > 0 && place) {
      return entry(number);
    }
    return entry(byDigest(name));
  }

  /**
   * The entry of that number.
   *
   * @throws BookProblem where there is none that can be read
   */
  public Entry entry(int number) throws IOException, BookProblem {
    Entry entry = EntryReader.entry(book, number);
    if (entry == null || entry.number() != number) {
      throw new BookProblem(
          Kind.DISK,
          "entry " + number + " cannot be read: it was altered, or is no entry",
          "what is wrong with the book: hornbook record verify");
    }
    return entry;
  }

  private int byDigest(String name) throws IOException, BookProblem {
    String digits = name.toLowerCase(Locale.ROOT).replaceFirst("^sha256:", "");
    List<EntryLine> lines = lines();
    List<EntryLine> found =
        digits.length() < SHORTEST || !digits.matches("[0-9a-f]+")
            ? List.of()
            : lines.stream()
                .filter(one -> one.digest() != null)
                .filter(one -> one.digest().startsWith("sha256:" + digits))
                .toList();
    if (found.size() > 1) {
      throw new BookProblem(
          Kind.USAGE,
          found.size() + " entries have a digest that begins with " + digits,
          "give more of it, or the number");
    }
    if (found.isEmpty()) {
      int last = lines.isEmpty() ? 0 : lines.get(lines.size() - 1).number();
      throw new BookProblem(
          Kind.MISSING,
          "there is no entry " + name,
          last == 0
              ? "the book has no entries yet"
              : "entries have numbers from 1 to " + last + ": hornbook record list");
    }
    return found.get(0).number();
  }
}
