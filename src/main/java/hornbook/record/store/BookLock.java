package hornbook.record.store;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.charset.StandardCharsets;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.util.concurrent.ThreadLocalRandom;

/**
 * Keeps others from writing at the same time, where the disk can do that. The system lets go of it
 * when a writer ends, however it ends: a lock file that was left is no lock. On a drive without
 * locks, or when another does not let go in time, the writing goes on all the same: an entry can
 * only take a number that is free, whoever holds what.
 */
final class BookLock implements AutoCloseable {
  private static final int LONGEST_NAP = 15;

  private final FileChannel channel;
  private final FileLock lock;

  private BookLock(FileChannel channel, FileLock lock) {
    this.channel = channel;
    this.lock = lock;
  }

  /** Waits so long for it at the most. */
  static BookLock take(Path file, Duration longest) throws IOException {
    FileChannel channel =
        FileChannel.open(
            file, StandardOpenOption.CREATE, StandardOpenOption.WRITE, LinkOption.NOFOLLOW_LINKS);
    FileLock lock = within(channel, longest);
    if (lock != null) {
      note(channel);
    }
    return new BookLock(channel, lock);
  }

  private static FileLock within(FileChannel channel, Duration longest) {
    long until = System.nanoTime() + longest.toNanos();
    while (true) {
      try {
        FileLock lock = channel.tryLock();
        if (lock != null) {
          return lock;
        }
      } catch (OverlappingFileLockException held) {
        // Another thread of this program has it: as good as another program.
      } catch (IOException noLocks) {
        return null;
      }
      if (System.nanoTime() - until > 0) {
        return null;
      }
      try {
        Thread.sleep(1 + ThreadLocalRandom.current().nextInt(LONGEST_NAP));
      } catch (InterruptedException stopped) {
        Thread.currentThread().interrupt();
        return null;
      }
    }
  }

  /** Who has it, for people who look. */
  private static void note(FileChannel channel) {
    String who = "process " + ProcessHandle.current().pid() + "\n";
    try {
      channel.truncate(0);
      channel.write(ByteBuffer.wrap(who.getBytes(StandardCharsets.UTF_8)), 0);
    } catch (IOException full) {
      // The lock holds without the note.
    }
  }

  /** Whether it is held; else the disk has none, or another did not let go in time. */
  boolean held() {
    return lock != null;
  }

  @Override
  public void close() throws IOException {
    channel.close();
  }
}
