package hornbook.cli.stream;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.PipedInputStream;
import java.io.PipedOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

/** Lines come out as they went in: all, once, in order, whatever the threads do. */
class LineStreamTest {
  private static final int LONGEST = 200_000;

  /** Answers a line with its number and its length. */
  private static final LineStream.Work COUNT =
      (line, to) -> to.write(ascii(line.number() + ":" + line.bytes().length + "\n"));

  private static byte[] ascii(String text) {
    return text.getBytes(StandardCharsets.US_ASCII);
  }

  private static String run(InputStream in, int workers, LineStream.Work work) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    new LineStream(workers, LONGEST, work).run(in, out, read -> {});
    return out.toString(StandardCharsets.US_ASCII);
  }

  @Property(tries = 60)
  void every_line_is_answered_in_order_and_empty_ones_are_passed_over(
      @ForAll @Size(max = 300) List<@IntRange(max = 2000) Integer> lengths,
      @ForAll @IntRange(min = 1, max = 5) int workers)
      throws IOException {
    String text = lengths.stream().map("x"::repeat).collect(Collectors.joining("\n"));
    String expected =
        IntStream.range(0, lengths.size())
            .filter(at -> lengths.get(at) > 0)
            .mapToObj(at -> at + 1 + ":" + lengths.get(at) + "\n")
            .collect(Collectors.joining());
    assertThat(run(new ByteArrayInputStream(ascii(text)), workers, COUNT)).isEqualTo(expected);
  }

  @Test
  void a_line_too_long_is_cut_and_the_next_is_whole() throws IOException {
    String text = "y".repeat(3 * LONGEST) + "\nz\n";
    assertThat(run(new ByteArrayInputStream(ascii(text)), 2, COUNT))
        .isEqualTo("1:" + LONGEST + "\n2:1\n");
  }

  @Test
  void whoever_waits_for_the_answer_gets_it() throws Exception {
    PipedOutputStream asking = new PipedOutputStream();
    PipedInputStream asked = new PipedInputStream(asking);
    PipedOutputStream answering = new PipedOutputStream();
    PipedInputStream answers = new PipedInputStream(answering);
    Thread stream =
        new Thread(
            () -> {
              try (answering) {
                new LineStream(2, LONGEST, COUNT).run(asked, answering, read -> {});
              } catch (IOException broken) {
                throw new IllegalStateException(broken);
              }
            });
    stream.start();
    for (String line : List.of("a", "bb", "ccc")) {
      asking.write(ascii(line + "\n"));
      asking.flush();
      assertThat(new String(answers.readNBytes(4), StandardCharsets.US_ASCII))
          .isEqualTo(line.length() + ":" + line.length() + "\n");
    }
    asking.close();
    stream.join();
    assertThat(answers.read()).isEqualTo(-1);
  }

  @Test
  void what_was_read_and_not_yet_answered_is_bounded() {
    AtomicLong read = new AtomicLong();
    AtomicLong answered = new AtomicLong();
    AtomicLong most = new AtomicLong();
    InputStream endless =
        new InputStream() {
          @Override
          public int read() {
            throw new UnsupportedOperationException();
          }

          @Override
          public int read(byte[] into, int from, int length) {
            long lines = read.addAndGet(length / 2);
            most.accumulateAndGet(lines - answered.get(), Math::max);
            for (int at = 0; at < length; at++) {
              into[from + at] = (byte) (at % 2 == 0 ? 'x' : '\n');
            }
            return lines > 2_000_000 ? -1 : length / 2 * 2;
          }
        };
    LineStream.Work work = (line, to) -> answered.incrementAndGet();
    assertThatCodeRuns(endless, work);
    assertThat(answered.get()).isGreaterThan(1_000_000);
    assertThat(most.get()).isLessThan(100_000);
  }

  private static void assertThatCodeRuns(InputStream in, LineStream.Work work) {
    try {
      run(in, 3, work);
    } catch (IOException broken) {
      throw new AssertionError(broken);
    }
  }

  @Test
  void a_reader_who_goes_away_ends_it() {
    OutputStream closed =
        new OutputStream() {
          @Override
          public void write(int one) throws IOException {
            throw new IOException("Broken pipe");
          }
        };
    byte[] many = ascii("line\n".repeat(500_000));
    LineStream stream = new LineStream(2, LONGEST, COUNT);
    assertThatThrownBy(() -> stream.run(new ByteArrayInputStream(many), closed, read -> {}))
        .isInstanceOf(IOException.class)
        .hasMessage("Broken pipe");
  }

  @Test
  void what_goes_wrong_with_a_line_is_not_hidden() {
    LineStream.Work work =
        (line, to) -> {
          if (line.number() == 4000) {
            throw new IllegalArgumentException("line 4000");
          }
        };
    LineStream stream = new LineStream(3, LONGEST, work);
    byte[] many = ascii("line\n".repeat(100_000));
    assertThatThrownBy(
            () ->
                stream.run(
                    new ByteArrayInputStream(many), OutputStream.nullOutputStream(), read -> {}))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessage("line 4000");
  }
}
