package hornbook.record.store;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.record.Digest;
import hornbook.record.store.BookFault.Kind;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whatever is done to a book by hand is found, and named. */
class BookCheckTest {
  private static final int ENTRIES = 3;

  @TempDir Path folder;

  private BookFolder book() throws IOException {
    return Sample.book(folder.resolve("book"), ENTRIES);
  }

  private static List<Integer> named(BookFolder book) throws IOException {
    return BookCheck.verify(book).faults().stream().map(BookFault::entry).distinct().toList();
  }

  private static List<Kind> kinds(BookFolder book) throws IOException {
    return BookCheck.verify(book).faults().stream().map(BookFault::kind).distinct().toList();
  }

  @Test
  void a_book_nobody_touched_is_whole() throws IOException {
    Verified verified = BookCheck.verify(book());
    assertThat(verified.faults()).isEmpty();
    assertThat(verified.remarks()).isEmpty();
    assertThat(verified.entries()).isEqualTo(ENTRIES);
  }

  /** Every byte of every file of every entry, changed in one bit and in all. */
  @Test
  void every_change_of_one_byte_is_found_in_the_entry_it_was_made_in() throws IOException {
    BookFolder book = book();
    int changes = 0;
    for (int number = 1; number <= ENTRIES; number++) {
      for (Path file : files(book.entry(number))) {
        byte[] bytes = Files.readAllBytes(file);
        for (int at = 0; at < bytes.length; at++) {
          byte before = bytes[at];
          bytes[at] ^= (byte) (at % 2 == 0 ? 1 : 0x20);
          Files.write(file, bytes);
          assertThat(named(book)).as("%s, byte %s", file, at).contains(number);
          bytes[at] = before;
          changes++;
        }
        Files.write(file, bytes);
      }
    }
    assertThat(changes).isGreaterThan(2000);
    assertThat(named(book)).isEmpty();
  }

  @Test
  void a_byte_more_or_less_is_found() throws IOException {
    BookFolder book = book();
    for (int number = 1; number <= ENTRIES; number++) {
      for (Path file : files(book.entry(number))) {
        String text = Files.readString(file, StandardCharsets.ISO_8859_1);
        for (String other : List.of(text + "\n", text.substring(1), text + " ")) {
          Files.writeString(file, other, StandardCharsets.ISO_8859_1);
          assertThat(named(book)).as("%s", file).contains(number);
        }
        Files.writeString(file, text, StandardCharsets.ISO_8859_1);
      }
    }
  }

  /** Whoever makes the digest of the entry fit is given away by the entry after, or by the note. */
  @Test
  void an_entry_altered_with_its_digest_is_found() throws IOException {
    for (int number = 1; number <= ENTRIES; number++) {
      BookFolder book = Sample.book(folder.resolve("forged" + number), ENTRIES);
      Path file = book.entryFile(number);
      String text = Files.readString(file);
      String forged = text.replace("visit " + number, "nothing");
      assertThat(forged).isNotEqualTo(text);
      Files.writeString(file, forged);
      Path sums = book.entry(number).resolve(BookFolder.SUMS);
      String line = Digest.of(forged.getBytes(StandardCharsets.UTF_8)).substring(7);
      Files.writeString(sums, line + Files.readString(sums).substring(64));
      assertThat(named(book)).containsExactly(number);
      assertThat(kinds(book)).containsExactly(Kind.ALTERED);
    }
  }

  @Test
  void every_entry_taken_away_is_named() throws IOException {
    for (int number = 1; number <= ENTRIES; number++) {
      BookFolder book = Sample.book(folder.resolve("taken" + number), ENTRIES);
      new LocalDisk().delete(book.entry(number));
      assertThat(named(book)).containsExactly(number);
      assertThat(kinds(book)).containsExactly(Kind.MISSING);

      Written next =
          new EntryWriter(book, new LocalDisk()).add(Sample.entry("Tansy", "x"), List.of());
      assertThat(next.entry().number()).isEqualTo(ENTRIES + 1);
      assertThat(named(book)).as("after another entry").containsExactly(number);
    }
  }

  @Test
  void every_two_entries_changed_for_each_other_are_named() throws IOException {
    for (int one = 1; one <= ENTRIES; one++) {
      for (int other = one + 1; other <= ENTRIES; other++) {
        BookFolder book = Sample.book(folder.resolve("s" + one + other), ENTRIES);
        Path aside = folder.resolve("aside" + one + other);
        Files.move(book.entry(one), aside);
        Files.move(book.entry(other), book.entry(one));
        Files.move(aside, book.entry(other));
        assertThat(named(book)).contains(one, other);
        assertThat(kinds(book)).contains(Kind.OUT_OF_ORDER);
      }
    }
  }

  @Test
  void the_files_of_two_entries_changed_for_each_other_are_named() throws IOException {
    BookFolder book = book();
    Path aside = folder.resolve("aside.json");
    Files.move(book.entryFile(1), aside);
    Files.move(book.entryFile(2), book.entryFile(1));
    Files.move(aside, book.entryFile(2));
    assertThat(named(book)).contains(1, 2);
  }

  @Test
  void a_copy_is_named_wherever_it_lies() throws IOException {
    for (String place : List.of("000004", "000002 (copy)", "other", "000002/other")) {
      BookFolder book = Sample.book(folder.resolve("copied" + place.hashCode()), ENTRIES);
      Path copy = Files.createDirectories(book.at(place));
      for (Path file : files(book.entry(2))) {
        Files.copy(file, copy.resolve(file.getFileName()));
      }
      assertThat(BookCheck.verify(book).faults())
          .as(place)
          .anyMatch(fault -> fault.says().contains("entry 2"));
    }
    BookFolder book = Sample.book(folder.resolve("file"), ENTRIES);
    Files.copy(book.entryFile(3), book.at("copy.json"));
    Files.copy(book.entryFile(3), book.entry(3).resolve("copy.json"));
    assertThat(BookCheck.verify(book).faults())
        .extracting(BookFault::entry, BookFault::kind)
        .containsExactly(
            org.assertj.core.api.Assertions.tuple(3, Kind.COPY),
            org.assertj.core.api.Assertions.tuple(3, Kind.COPY));
  }

  @Test
  void the_note_of_the_last_entry_is_held_to_the_entries() throws IOException {
    BookFolder book = book();
    Path last = book.at(BookFolder.LAST);
    byte[] bytes = Files.readAllBytes(last);
    for (int at = 0; at < bytes.length; at++) {
      bytes[at] ^= 1;
      Files.write(last, bytes);
      assertThat(BookCheck.verify(book).whole()).as("byte %s", at).isFalse();
      bytes[at] ^= 1;
    }
    Files.delete(last);
    assertThat(BookCheck.verify(book).faults())
        .anyMatch(fault -> fault.says().contains("last.sha256 is missing"));
  }

  /**
   * What is not the book's own is let be: files of the system, notes of a person, a huge number.
   */
  @Test
  void foreign_files_do_no_harm() throws IOException {
    BookFolder book = book();
    Files.writeString(book.at(".DS_Store"), "x");
    Files.writeString(book.at("notes.txt"), "{\"format\": \"hornbook-advice/1\"}");
    Files.createDirectories(book.at("12"));
    Files.writeString(book.at("evil\u001b[2Jname"), "x");
    Files.createDirectories(book.entry(1).resolve("x/y"));
    Verified verified = BookCheck.verify(book);
    assertThat(verified.faults()).isEmpty();
    assertThat(verified.remarks()).hasSize(5).allMatch(one -> one.contains("not part of the book"));
    assertThat(String.join("", verified.remarks())).doesNotContain("\u001b");
    Files.createDirectories(book.at("999999999"));
    assertThat(BookCheck.verify(book).faults()).hasSize(2);
  }

  /** Nothing is read, written or taken away through a link. */
  @Test
  void links_lead_nowhere() throws IOException {
    BookFolder book = book();
    Path outside = Files.createDirectories(folder.resolve("outside"));
    new StoredBook(book, new LocalDisk()).lines();
    Path secret =
        Files.copy(
            book.entryFile(3),
            outside.resolve("entry.json"),
            java.nio.file.StandardCopyOption.COPY_ATTRIBUTES);
    new LocalDisk().delete(book.entry(3));
    Files.createSymbolicLink(book.entry(3), outside);
    Files.createSymbolicLink(book.at(".writing-00000000-1-x"), outside);
    assertThat(kinds(book)).containsExactly(Kind.LINK);
    assertThat(new StoredBook(book, new LocalDisk()).lines().get(2).horse()).isNull();

    new EntryWriter(book, new LocalDisk()).add(Sample.entry("Tansy", "x"), List.of());
    new LocalDisk().delete(book.at(".writing-00000000-1-x"));

    assertThat(secret).exists();
    assertThat(book.entryFile(4)).exists();
  }

  @Test
  void a_picture_outside_of_its_entry_is_never_followed() throws IOException {
    BookFolder book = book();
    Path file = book.entryFile(3);
    String text = Files.readString(file);
    String tricked = text.replaceFirst("\"photos/[0-9a-f]{64}.jpg\"", "\"../../outside.jpg\"");
    assertThat(tricked).isNotEqualTo(text);
    Files.writeString(file, tricked);
    assertThat(BookCheck.verify(book).faults())
        .anyMatch(fault -> fault.says().contains("names a picture outside of its folder"));
  }

  private static List<Path> files(Path folder) throws IOException {
    List<Path> files = new ArrayList<>();
    try (Stream<Path> all = Files.walk(folder)) {
      all.filter(Files::isRegularFile).sorted().forEach(files::add);
    }
    return files;
  }
}
