package hornbook.record.store;

import hornbook.record.Digest;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.security.MessageDigest;
import java.util.Comparator;
import java.util.HexFormat;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/** The disk of this machine, or of another that is reached as one. */
public final class LocalDisk implements Disk {
  private static final int PIECE = 1 << 16;

  @Override
  public void makeBook(Path folder) throws IOException {
    Path above = folder.toAbsolutePath().getParent();
    if (above != null) {
      Files.createDirectories(above);
    }
    boolean posix = folder.getFileSystem().supportedFileAttributeViews().contains("posix");
    if (posix) {
      Set<PosixFilePermission> own = PosixFilePermissions.fromString("rwx------");
      Files.createDirectory(folder, PosixFilePermissions.asFileAttribute(own));
    } else {
      Files.createDirectory(folder);
    }
  }

  @Override
  public void makeFolder(Path folder) throws IOException {
    Files.createDirectory(folder);
  }

  @Override
  public void write(Path file, byte[] bytes) throws IOException {
    try (FileChannel to =
        FileChannel.open(file, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
      put(ByteBuffer.wrap(bytes), to);
      to.force(true);
    }
  }

  @Override
  public String copy(Path from, Path to) throws IOException {
    MessageDigest digest = Digest.sha256();
    try (InputStream in = Files.newInputStream(from);
        FileChannel out =
            FileChannel.open(to, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
      byte[] piece = new byte[PIECE];
      for (int read = in.read(piece); read >= 0; read = in.read(piece)) {
        digest.update(piece, 0, read);
        put(ByteBuffer.wrap(piece, 0, read), out);
      }
      out.force(true);
    }
    return Digest.PREFIX + HexFormat.of().formatHex(digest.digest());
  }

  private static void put(ByteBuffer bytes, FileChannel to) throws IOException {
    while (bytes.hasRemaining()) {
      to.write(bytes);
    }
  }

  /** Windows opens no folder as a file, and makes names last by itself. */
  @Override
  public void force(Path folder) throws IOException {
    if (System.getProperty("os.name").startsWith("Windows")) {
      return;
    }
    try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
      channel.force(true);
    }
  }

  @Override
  public void place(Path folder, Path at) throws IOException {
    try {
      Files.move(folder, at, StandardCopyOption.ATOMIC_MOVE);
    } catch (AtomicMoveNotSupportedException impossible) {
      throw impossible;
    } catch (FileSystemException refused) {
      boolean there = Files.exists(at, LinkOption.NOFOLLOW_LINKS);
      if (there && Files.exists(folder, LinkOption.NOFOLLOW_LINKS)) {
        throw new FileAlreadyExistsException(at.toString());
      }
      throw refused;
    }
  }

  @Override
  public void replace(Path file, Path at) throws IOException {
    Files.move(file, at, StandardCopyOption.ATOMIC_MOVE);
  }

  @Override
  public void append(Path file, byte[] bytes) throws IOException {
    try (FileChannel to =
        FileChannel.open(
            file,
            StandardOpenOption.CREATE,
            StandardOpenOption.APPEND,
            LinkOption.NOFOLLOW_LINKS)) {
      put(ByteBuffer.wrap(bytes), to);
    }
  }

  @Override
  public void delete(Path path) throws IOException {
    List<Path> all;
    if (!Files.exists(path, LinkOption.NOFOLLOW_LINKS)) {
      return;
    }
    try (Stream<Path> within = Files.walk(path)) {
      all = within.sorted(Comparator.reverseOrder()).toList();
    }
    for (Path one : all) {
      Files.deleteIfExists(one);
    }
  }
}
