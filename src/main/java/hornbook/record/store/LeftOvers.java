package hornbook.record.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.UUID;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What writers that were stopped have left beside the book. */
final class LeftOvers {
  private static final Duration OLD = Duration.ofDays(2);
  private static final Pattern NAME =
      Pattern.compile(Pattern.quote(BookFolder.WRITING) + "([0-9a-f]{8})-(\\d+)-.*");
  private static final String HOST = host();

  private final BookFolder book;
  private final Disk disk;

  LeftOvers(BookFolder book, Disk disk) {
    this.book = book;
    this.disk = disk;
  }

  /** A name of its own for what is being written: it tells the machine and the process. */
  static String name() {
    return BookFolder.WRITING
        + HOST
        + "-"
        + ProcessHandle.current().pid()
        + "-"
        + UUID.randomUUID();
  }

  /** Takes away what no writer is at any more. A writer robbed of its own begins anew. */
  void sweep() throws IOException {
    for (String name : book.names()) {
      if (name.startsWith(BookFolder.WRITING) && left(name)) {
        disk.delete(book.at(name));
      }
    }
  }

  private boolean left(String name) throws IOException {
    Matcher parts = NAME.matcher(name);
    if (parts.matches() && parts.group(1).equals(HOST)) {
      long pid = Long.parseLong(parts.group(2));
      return ProcessHandle.of(pid).map(one -> !one.isAlive()).orElse(true);
    }
    Path path = book.at(name);
    if (!Files.exists(path, LinkOption.NOFOLLOW_LINKS)) {
      return false;
    }
    Instant changed = Files.getLastModifiedTime(path, LinkOption.NOFOLLOW_LINKS).toInstant();
    return changed.isBefore(Instant.now().minus(OLD));
  }

  private static String host() {
    String name = System.getenv().getOrDefault("HOSTNAME", "");
    if (name.isEmpty()) {
      name = System.getenv().getOrDefault("COMPUTERNAME", "");
    }
    Path told = Path.of("/proc/sys/kernel/hostname");
    if (name.isEmpty() && Files.isReadable(told)) {
      try {
        name = Files.readString(told);
      } catch (IOException untold) {
        name = "here";
      }
    }
    return String.format("%08x", name.hashCode());
  }
}
