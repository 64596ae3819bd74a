package hornbook.record.store;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.record.Entry;
import hornbook.record.EntryLine;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Several writers at one book; so many entries each as {@code -Drecord.entries=500} asks. */
class TwoWritersTest {
  private static final int EACH = Integer.getInteger("record.entries", 25);

  @TempDir Path folder;

  @Test
  void two_programs_write_one_chain() throws IOException, InterruptedException {
    BookFolder book = new BookFolder(folder.resolve("book"));
    Process one = WriterProcess.builder(book.root(), "one", EACH, false).start();
    Process other = WriterProcess.builder(book.root(), "other", EACH, false).start();
    String said = new String(one.getInputStream().readAllBytes());
    said += new String(other.getInputStream().readAllBytes());
    assertThat(one.waitFor()).isZero();
    assertThat(other.waitFor()).isZero();

    assertThat(said.lines()).hasSize(2 * EACH);
    whole(book, 2 * EACH);
    StoredBook read = new StoredBook(book, new LocalDisk());
    Set<String> done = new HashSet<>();
    for (EntryLine line : read.lines()) {
      done.add(entry(read, line.number()).done());
    }
    assertThat(done).hasSize(2 * EACH);
  }

  private static Entry entry(StoredBook book, int number) throws IOException {
    try {
      return book.entry(number);
    } catch (BookProblem none) {
      throw new AssertionError(none);
    }
  }

  /** As on a drive where a lock holds nobody back: each writer goes without. */
  @Test
  void without_any_lock_a_number_is_still_given_once() throws Exception {
    BookFolder book = new BookFolder(folder.resolve("book"));
    new EntryWriter(book, new LocalDisk()).add(Sample.entry("Tansy", "first"), List.of());
    Callable<Void> writer =
        () -> {
          for (int i = 0; i < EACH; i++) {
            new EntryWriter(book, new LocalDisk()).addUnlocked(Sample.entry("T", "x"), List.of());
          }
          return null;
        };
    ExecutorService threads = Executors.newFixedThreadPool(4);
    for (var one : threads.invokeAll(List.of(writer, writer, writer, writer))) {
      one.get();
    }
    threads.shutdown();
    whole(book, 4 * EACH + 1);
  }

  /** A lock that is never let go, as a server keeps it for a machine that is gone. */
  @Test
  void a_lock_held_for_ever_holds_nobody_up_for_ever() throws IOException {
    BookFolder book = Sample.book(folder.resolve("book"), 1);
    try (FileChannel channel =
            FileChannel.open(book.at(BookFolder.LOCK), StandardOpenOption.WRITE);
        FileLock held = channel.lock()) {
      assertThat(held.isValid()).isTrue();
      EntryWriter writer = new EntryWriter(book, new LocalDisk(), java.time.Duration.ofMillis(50));
      assertThat(writer.add(Sample.entry("Tansy", "x"), List.of()).entry().number()).isEqualTo(2);
    }
    whole(book, 2);
  }

  @Test
  void a_lock_file_that_was_left_is_no_lock() throws IOException {
    BookFolder book = Sample.book(folder.resolve("book"), 1);
    Files.writeString(book.at(BookFolder.LOCK), "process 1\n");
    new EntryWriter(book, new LocalDisk()).add(Sample.entry("Tansy", "x"), List.of());
    whole(book, 2);
  }

  /** The order is that of the numbers, whatever the clock says. */
  @Test
  void a_clock_set_back_changes_no_order() throws IOException {
    BookFolder book = Sample.book(folder.resolve("book"), 1);
    Instant before = Sample.NOON.minusSeconds(86_400);
    new EntryWriter(book, new LocalDisk()).add(Sample.entry("Tansy", "x", before), List.of());
    new EntryWriter(book, new LocalDisk()).add(Sample.entry("Tansy", "y"), List.of());
    Verified verified = BookCheck.verify(book);
    assertThat(verified.faults()).isEmpty();
    assertThat(verified.remarks()).hasSize(1).first().asString().contains("entry 2", "clock");
    assertThat(new StoredBook(book, new LocalDisk()).lines())
        .extracting(EntryLine::number)
        .containsExactly(1, 2, 3);
  }

  private static void whole(BookFolder book, int entries) throws IOException {
    Verified verified = BookCheck.verify(book);
    assertThat(verified.faults()).isEmpty();
    assertThat(verified.entries()).isEqualTo(entries);
  }
}
