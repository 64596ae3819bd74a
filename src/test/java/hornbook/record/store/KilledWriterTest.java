package hornbook.record.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Writers are killed at a moment of chance, as often as {@code -Drecord.kills=1000} asks; a few
 * times in an ordinary run.
 */
class KilledWriterTest {
  private static final int KILLS = Integer.getInteger("record.kills", 6);
  private static final int KILLS_A_BOOK = 25;
  private static final int LONGEST = 40_000_000;

  @TempDir Path folder;

  @Test
  void nothing_told_is_lost_and_nothing_is_half_written()
      throws IOException, InterruptedException, BookProblem {
    long seed = Long.getLong("record.seed", System.nanoTime());
    Random chance = new Random(seed);
    int entries = 0;
    int leftAside = 0;
    int kills = 0;
    List<String> told = new ArrayList<>();
    BookFolder book = null;
    while (kills < KILLS) {
      if (kills % KILLS_A_BOOK == 0) {
        book = new BookFolder(folder.resolve("book" + kills));
        entries += told.size();
        told.clear();
      }
      kills++;
      told.addAll(killed(book, "kill" + kills, chance));
      leftAside += aside(book);
      check(book, told, "seed " + seed + ", kill " + kills);
    }
    new EntryWriter(book, new LocalDisk()).add(Sample.entry("Tansy", "at last"), List.of());
    assertThat(aside(book)).as("left over after another entry").isZero();
    entries += told.size();
    System.out.printf(
        "%d kills, %d entries told as written, %d kills in the middle of one%n",
        kills, entries, leftAside);
  }

  /** What the writer said before it was killed. */
  private List<String> killed(BookFolder book, String name, Random chance)
      throws IOException, InterruptedException {
    Path said = folder.resolve(name);
    Process writer =
        WriterProcess.builder(book.root(), name, Integer.MAX_VALUE, chance.nextBoolean())
            .redirectOutput(said.toFile())
            .start();
    while (Files.size(said) == 0) {
      assertThat(writer.isAlive()).isTrue();
      Thread.sleep(1);
    }
    long until = System.nanoTime() + chance.nextInt(LONGEST);
    while (System.nanoTime() < until) {
      Thread.onSpinWait();
    }
    writer.destroyForcibly().waitFor();
    String all = Files.readString(said);
    return all.substring(0, all.lastIndexOf('\n') + 1).lines().toList();
  }

  private static void check(BookFolder book, List<String> told, String when)
      throws IOException, BookProblem {
    Verified verified = BookCheck.verify(book);
    assertThat(verified.faults()).as(when).isEmpty();
    StoredBook read = new StoredBook(book, new LocalDisk());
    for (String line : told) {
      int number = Integer.parseInt(line.substring(0, line.indexOf(' ')));
      assertThat(read.entry(number).done())
          .as(when)
          .isEqualTo(line.substring(line.indexOf(' ') + 1));
    }
    assertThat(read.lines()).as(when).hasSize(verified.entries());
  }

  private static int aside(BookFolder book) throws IOException {
    try (Stream<Path> names = Files.list(book.root())) {
      return (int)
          names.filter(one -> one.getFileName().toString().startsWith(BookFolder.WRITING)).count();
    }
  }
}
