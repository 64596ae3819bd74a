package hornbook.record.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import hornbook.record.EntryLine;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Writing is broken off at every single step it has, in every way. */
class InterruptedWritingTest {
  @TempDir Path folder;

  /**
   * The book before is whole, what was told to be written is there, and the next entry goes on: if
   * the step is called again and again, all of the steps have been tried.
   */
  @ParameterizedTest
  @CsvSource({"true, 0.5", "true, 1", "false, 0", "false, 0.5"})
  void broken_off_at_any_step_the_book_stays_whole(boolean stops, double share)
      throws IOException, BookProblem {
    Path photo = Files.write(folder.resolve("hoof.jpg"), new byte[100]);
    int step = 0;
    boolean reached = true;
    while (reached) {
      step++;
      BookFolder book = Sample.book(folder.resolve("book" + step), 2);
      FailingDisk disk = new FailingDisk(step, stops, share);
      boolean told = false;
      try {
        new EntryWriter(book, disk).add(Sample.entry("Tansy", "third"), List.of(photo));
        told = true;
      } catch (IOException | FailingDisk.Stopped brokenOff) {
        assertThat(disk.failed()).isTrue();
      }
      reached = disk.failed();
      goesOn(book, told, step);
    }
    assertThat(step).as("steps tried").isGreaterThan(12);
  }

  private static void goesOn(BookFolder book, boolean told, int step)
      throws IOException, BookProblem {
    Verified after = BookCheck.verify(book);
    assertThat(after.faults()).as("after step %s", step).isEmpty();
    assertThat(after.entries()).as("after step %s", step).isBetween(told ? 3 : 2, 3);
    StoredBook read = new StoredBook(book, new LocalDisk());
    assertThat(read.lines()).extracting(EntryLine::horse).containsOnly("Tansy");
    assertThat(read.entry(1).done()).isEqualTo("visit 1");

    new EntryWriter(book, new LocalDisk()).add(Sample.entry("Tansy", "next"), List.of());

    Verified next = BookCheck.verify(book);
    assertThat(next.faults()).as("after step %s and another entry", step).isEmpty();
    assertThat(next.entries()).isEqualTo(after.entries() + 1);
    assertThat(read.lines()).hasSize(next.entries());
  }

  /** The same in a place where there was no book. */
  @ParameterizedTest
  @CsvSource({"true, 0.5", "false, 0.5"})
  void the_first_entry_of_all_may_be_broken_off_too(boolean stops, double share)
      throws IOException {
    int step = 0;
    boolean reached = true;
    while (reached) {
      step++;
      BookFolder book = new BookFolder(folder.resolve("above" + step).resolve("book"));
      FailingDisk disk = new FailingDisk(step, stops, share);
      try {
        new EntryWriter(book, disk).add(Sample.entry("Tansy", "first"), List.of());
      } catch (IOException | FailingDisk.Stopped brokenOff) {
        assertThat(disk.failed()).isTrue();
      }
      reached = disk.failed();
      new EntryWriter(book, new LocalDisk()).add(Sample.entry("Tansy", "next"), List.of());
      assertThat(BookCheck.verify(book).faults()).as("after step %s", step).isEmpty();
    }
    assertThat(step).isGreaterThan(10);
  }

  /** A full disk that lets go again: the entry is there once, not twice. */
  @ParameterizedTest
  @CsvSource({"3", "4", "5"})
  void what_failed_can_be_given_again(int step) throws IOException {
    BookFolder book = Sample.book(folder.resolve("again"), 1);
    FailingDisk full = new FailingDisk(step, false, 0.5);
    EntryWriter writer = new EntryWriter(book, full);
    assertThatCode(() -> writer.add(Sample.entry("Tansy", "second"), List.of()))
        .isInstanceOf(IOException.class)
        .hasMessageContaining("No space left");
    assertThat(writer.add(Sample.entry("Tansy", "second"), List.of()).entry().number())
        .isEqualTo(2);
    assertThat(BookCheck.verify(book).entries()).isEqualTo(2);
  }
}
