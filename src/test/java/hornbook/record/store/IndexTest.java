package hornbook.record.store;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.record.EntryLine;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The index only saves time: whatever becomes of it, the list is that of the entries. */
class IndexTest {
  @TempDir Path folder;

  private static List<EntryLine> lines(BookFolder book) throws IOException {
    return new StoredBook(book, new LocalDisk()).lines();
  }

  @Test
  void whatever_becomes_of_it_the_list_is_the_same() throws IOException {
    BookFolder book = Sample.book(folder.resolve("book"), 3);
    Path index = book.at(BookFolder.INDEX);
    List<EntryLine> right = lines(book);
    assertThat(right).extracting(EntryLine::number).containsExactly(1, 2, 3);
    assertThat(right).extracting(EntryLine::chose).containsOnly("left-fore: glue-on");
    byte[] bytes = Files.readAllBytes(index);
    for (int at = 0; at < bytes.length; at++) {
      byte[] other = bytes.clone();
      other[at] ^= 1;
      Files.write(index, other);
      assertThat(lines(book)).as("byte %s", at).isEqualTo(right);
    }
    Files.write(index, Arrays.copyOf(bytes, bytes.length / 2));
    assertThat(lines(book)).isEqualTo(right);
    Files.delete(index);
    assertThat(lines(book)).isEqualTo(right);
    assertThat(Files.readAllBytes(index)).as("made anew").isEqualTo(bytes);
    Files.delete(index);
    Files.createSymbolicLink(index, Files.writeString(folder.resolve("other"), "x"));
    assertThat(lines(book)).isEqualTo(right);
    assertThat(folder.resolve("other")).hasContent("x");
  }

  @Test
  void an_entry_that_was_changed_is_read_anew() throws IOException {
    BookFolder book = Sample.book(folder.resolve("book"), 2);
    lines(book);
    Path file = book.entryFile(2);
    String text = Files.readString(file, StandardCharsets.UTF_8);
    FileTime later = FileTime.fromMillis(Files.getLastModifiedTime(file).toMillis() + 5000);
    Files.writeString(file, text.replace("Tansy", "Nancy"), StandardCharsets.UTF_8);
    Files.setLastModifiedTime(file, later);
    assertThat(lines(book)).extracting(EntryLine::horse).containsExactly("Tansy", "Nancy");
    Files.writeString(file, "no entry any more");
    assertThat(lines(book)).extracting(EntryLine::horse).containsExactly("Tansy", null);
  }

  /** A horse may be called anything. */
  @Test
  void no_name_breaks_a_line() throws IOException {
    BookFolder book = new BookFolder(folder.resolve("book"));
    EntryWriter writer = new EntryWriter(book, new LocalDisk());
    for (String name : List.of("a\tb", "a\nb", "\u001b[31mred", "Żółć\u202e", "")) {
      writer.add(Sample.entry(name, "x"), List.of());
    }
    List<EntryLine> first = lines(book);
    assertThat(first).hasSize(5);
    assertThat(first)
        .extracting(EntryLine::horse)
        .startsWith("a\\u0009b", "a\\u000ab", "\\u001b[31mred", "Żółć\\u202e");
    assertThat(lines(book)).isEqualTo(first);
  }
}
