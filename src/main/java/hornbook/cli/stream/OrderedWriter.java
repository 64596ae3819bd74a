package hornbook.cli.stream;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Future;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.Semaphore;

/** Writes answers on a thread of its own, each once it is there and all before it are written. */
final class OrderedWriter {
  private static final Answer END = new Answer(null, null);

  private final OutputStream out;
  private final BlockingQueue<Answer> waiting = new LinkedBlockingQueue<>();
  private final CompletableFuture<Void> done = new CompletableFuture<>();
  private final Thread thread = new Thread(this::write, "answers");

  private record Answer(Future<ByteArrayOutputStream> bytes, Semaphore room) {}

  OrderedWriter(OutputStream out) {
    this.out = out;
  }

  void begin() {
    thread.setDaemon(true);
    thread.start();
  }

  /**
   * Adds the next answer, and whom to tell once it is written; false when nothing is written any
   * more.
   */
  boolean add(Future<ByteArrayOutputStream> answer, Semaphore room) {
    waiting.add(new Answer(answer, room));
    return !done.isDone();
  }

  /** Waits until everything is written. */
  void end() throws InterruptedException, ExecutionException {
    waiting.add(END);
    done.get();
  }

  void stop() {
    thread.interrupt();
  }

  private void write() {
    try {
      for (Answer next = waiting.take(); next != END; next = waiting.take()) {
        write(next);
      }
      done.complete(null);
    } catch (Throwable broken) {
      done.completeExceptionally(broken instanceof ExecutionException ? broken.getCause() : broken);
      // The reader may be waiting for room that nobody will make any more.
      for (Answer left = waiting.poll(); left != null; left = waiting.poll()) {
        release(left);
      }
    }
  }

  private void write(Answer next) throws InterruptedException, ExecutionException, IOException {
    ByteArrayOutputStream bytes;
    try {
      bytes = next.bytes().get();
    } finally {
      release(next);
    }
    bytes.writeTo(out);
    if (waiting.isEmpty()) {
      out.flush();
    }
  }

  private static void release(Answer answer) {
    if (answer.room() != null) {
      answer.room().release();
    }
  }
}
