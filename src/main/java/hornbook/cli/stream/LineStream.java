package hornbook.cli.stream;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.Semaphore;
import java.util.function.LongConsumer;

/**
 * Works on the lines of a stream on several threads and writes the answers in the order of the
 * lines. What is read but not yet answered is bounded, so a stream of any length takes the same
 * memory.
 */
public final class LineStream {
  private static final int HANDFULS_A_WORKER = 3;
  private static final int MOST_ROOM = 1 << 20;

  private final int workers;
  private final int longest;
  private final Work work;

  /** How many bytes the next answers are likely to take. */
  private volatile int room = 1 << 15;

  /** What is done with a line. */
  public interface Work {
    /** Writes the answer to one line, its end with it. Called on several threads at once. */
    void answer(Line line, OutputStream to) throws IOException;
  }

  /**
   * @param longest the most bytes that are kept of a line
   */
  public LineStream(int workers, int longest, Work work) {
    this.workers = workers;
    this.longest = longest;
    this.work = work;
  }

  /**
   * Works on all lines.
   *
   * @param read is told how many bytes were read so far
   * @throws IOException when the lines cannot be read, or the answers cannot be written
   */
  public void run(InputStream in, OutputStream out, LongConsumer read) throws IOException {
    ExecutorService pool = Executors.newFixedThreadPool(workers, LineStream::worker);
    OrderedWriter writer = new OrderedWriter(out);
    Semaphore free = new Semaphore(HANDFULS_A_WORKER * workers);
    try {
      LineReader reader = new LineReader(in, longest);
      writer.begin();
      for (List<Line> lines = reader.next(); !lines.isEmpty(); lines = reader.next()) {
        free.acquire();
        List<Line> handful = lines;
        Future<ByteArrayOutputStream> answer = pool.submit(() -> answers(handful));
        if (!writer.add(answer, free)) {
          break;
        }
        read.accept(reader.read());
      }
      writer.end();
    } catch (InterruptedException | ExecutionException stopped) {
      throw unwrapped(stopped);
    } finally {
      pool.shutdownNow();
      writer.stop();
    }
  }

  private ByteArrayOutputStream answers(List<Line> lines) throws IOException {
    ByteArrayOutputStream answers = new ByteArrayOutputStream(room);
    for (Line line : lines) {
      work.answer(line, answers);
    }
    room = Math.min(MOST_ROOM, answers.size() + answers.size() / 4);
    return answers;
  }

  private static Thread worker(Runnable work) {
    Thread thread = new Thread(work, "lines");
    thread.setDaemon(true);
    return thread;
  }

  private static RuntimeException unwrapped(Exception stopped) throws IOException {
    Throwable cause = stopped instanceof ExecutionException ? stopped.getCause() : stopped;
    if (cause instanceof Error error) {
      throw error;
    }
    if (cause instanceof RuntimeException fault) {
      throw fault;
    }
    if (cause instanceof IOException broken) {
      throw broken;
    }
    return new IllegalStateException(cause);
  }
}
