package hornbook.record.store;

import java.io.IOException;
import java.nio.file.Path;

/**
 * What the daybook asks of a disk. Each call has reached the disk when it returns, as far as the
 * system can promise, or has thrown.
 */
public interface Disk {

  /** Makes the folder of a book, for this user alone, and what is missing above it. */
  void makeBook(Path folder) throws IOException;

  /** Makes a folder that is not there yet. */
  void makeFolder(Path folder) throws IOException;

  /** Writes a file that is not there yet. */
  void write(Path file, byte[] bytes) throws IOException;

  /**
   * Copies a file to one that is not there yet.
   *
   * @return the digest of what was copied
   */
  String copy(Path from, Path to) throws IOException;

  /** Makes the names in a folder last. */
  void force(Path folder) throws IOException;

  /**
   * Gives a folder its place at one stroke.
   *
   * @throws java.nio.file.FileAlreadyExistsException when there is one with something in it
   */
  void place(Path folder, Path at) throws IOException;

  /** Puts a file in the place of another, or where none is, at one stroke. */
  void replace(Path file, Path at) throws IOException;

  /** Adds to the end of a file. */
  void append(Path file, byte[] bytes) throws IOException;

  /** Takes a file or a folder with all that is in it away; links are taken away, not followed. */
  void delete(Path path) throws IOException;
}
