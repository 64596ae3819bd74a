package hornbook.record.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/**
 * A disk on which one call goes wrong: it is full in the middle of a file, or the machine stops
 * there. After a stop nothing is done any more, not even tidying up.
 */
final class FailingDisk implements Disk {
  /** The machine has stopped. */
  static final class Stopped extends Error {
    private static final long serialVersionUID = 1L;
  }

  private final Disk disk = new LocalDisk();
  private final int fails;
  private final boolean stops;
  private final double share;
  private int calls;
  private boolean stopped;

  /**
   * @param fails which call goes wrong, from 1
   * @param stops whether the machine stops there; else the disk is full there
   * @param share how much of what was to be written gets there first
   */
  FailingDisk(int fails, boolean stops, double share) {
    this.fails = fails;
    this.stops = stops;
    this.share = share;
  }

  /** Whether it came to that call. */
  boolean failed() {
    return calls >= fails;
  }

  /** Counts the call; whether it is the one that goes wrong. */
  private boolean wrong() {
    if (stopped) {
      throw new Stopped();
    }
    calls++;
    return calls == fails;
  }

  private void fail() throws IOException {
    stopped = stops;
    if (stops) {
      throw new Stopped();
    }
    throw new IOException("No space left on device");
  }

  private byte[] part(byte[] bytes) {
    return java.util.Arrays.copyOf(bytes, (int) (bytes.length * share));
  }

  @Override
  public void makeBook(Path folder) throws IOException {
    if (wrong()) {
      fail();
    }
    disk.makeBook(folder);
  }

  @Override
  public void makeFolder(Path folder) throws IOException {
    if (wrong()) {
      fail();
    }
    disk.makeFolder(folder);
  }

  @Override
  public void write(Path file, byte[] bytes) throws IOException {
    if (wrong()) {
      disk.write(file, part(bytes));
      fail();
    }
    disk.write(file, bytes);
  }

  @Override
  public String copy(Path from, Path to) throws IOException {
    if (wrong()) {
      disk.write(to, part(Files.readAllBytes(from)));
      fail();
    }
    return disk.copy(from, to);
  }

  @Override
  public void force(Path folder) throws IOException {
    if (wrong()) {
      fail();
    }
    disk.force(folder);
  }

  @Override
  public void place(Path folder, Path at) throws IOException {
    if (wrong()) {
      fail();
    }
    disk.place(folder, at);
  }

  @Override
  public void replace(Path file, Path at) throws IOException {
    if (wrong()) {
      fail();
    }
    disk.replace(file, at);
  }

  @Override
  public void append(Path file, byte[] bytes) throws IOException {
    if (wrong()) {
      disk.append(file, part(bytes));
      fail();
    }
    disk.append(file, bytes);
  }

  @Override
  public void delete(Path path) throws IOException {
    if (wrong()) {
      fail();
    }
    disk.delete(path);
  }
}
