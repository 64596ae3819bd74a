package hornbook.record.store;

import hornbook.record.Entry;
import hornbook.record.EntryLine;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.attribute.BasicFileAttributes;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What a list shows of every entry, kept so that a long book is listed as fast as a short one. The
 * entries alone are the truth: a line that does not fit the file of its entry is read anew.
 */
final class Index {
  private final BookFolder book;
  private final Disk disk;

  private Index(BookFolder book, Disk disk) {
    this.book = book;
    this.disk = disk;
  }

  static Index of(BookFolder book, Disk disk) {
    return new Index(book, disk);
  }

  /** Adds the line of an entry just written. */
  void add(EntryLine entry) throws IOException {
    String line = line(entry, stat(book.entryFile(entry.number()))).text();
    disk.append(file(), line.getBytes(StandardCharsets.UTF_8));
  }

  /**
   * A line for every entry, in their order; one whose file makes no sense is shown by its number.
   */
  List<EntryLine> lines() throws IOException {
    Map<Integer, IndexLine> kept = kept();
    List<IndexLine> lines = new ArrayList<>();
    boolean fits = true;
    for (int number : book.numbers()) {
      BasicFileAttributes stat = stat(book.entryFile(number));
      IndexLine line = kept.get(number);
      boolean same =
          line != null
              && stat != null
              && line.size() == stat.size()
              && line.changed() == stat.lastModifiedTime().toMillis();
      fits &= same;
      lines.add(same ? line : line(read(number, stat), stat));
    }
    if (!fits) {
      rewrite(lines);
    }
    return lines.stream().map(IndexLine::entry).toList();
  }

  private Path file() {
    return book.at(BookFolder.INDEX);
  }

  private Map<Integer, IndexLine> kept() throws IOException {
    Map<Integer, IndexLine> kept = new HashMap<>();
    if (!BookFolder.plain(file())) {
      return kept;
    }
    String text = new String(Files.readAllBytes(file()), StandardCharsets.UTF_8);
    int from = 0;
    for (int end = text.indexOf('\n'); end >= 0; end = text.indexOf('\n', from)) {
      IndexLine line = IndexLine.of(text.substring(from, end));
      if (line != null) {
        kept.put(line.entry().number(), line);
      }
      from = end + 1;
    }
    return kept;
  }

  private EntryLine read(int number, BasicFileAttributes stat) throws IOException {
    Entry entry = stat == null ? null : EntryReader.entry(book, number);
    return entry == null || entry.number() != number
        ? new EntryLine(number, null, null, null, null, null, null, false, 0)
        : EntryLine.of(entry);
  }

  private static IndexLine line(EntryLine entry, BasicFileAttributes stat) {
    return stat == null
        ? new IndexLine(entry, -1, -1)
        : new IndexLine(entry, stat.size(), stat.lastModifiedTime().toMillis());
  }

  /** Null where there is no such file, or a link in place of it or of its folder. */
  private static BasicFileAttributes stat(Path file) {
    if (!Files.isDirectory(file.getParent(), LinkOption.NOFOLLOW_LINKS)) {
      return null;
    }
    try {
      BasicFileAttributes stat =
          Files.readAttributes(file, BasicFileAttributes.class, LinkOption.NOFOLLOW_LINKS);
      return stat.isRegularFile() ? stat : null;
    } catch (IOException none) {
      return null;
    }
  }

  /** Where the book cannot be written, the next list takes as long as this one. */
  private void rewrite(List<IndexLine> lines) {
    StringBuilder text = new StringBuilder();
    lines.forEach(line -> text.append(line.text()));
    Path beside = book.at(LeftOvers.name());
    try {
      try {
        disk.write(beside, text.toString().getBytes(StandardCharsets.UTF_8));
        disk.replace(beside, file());
      } finally {
        disk.delete(beside);
      }
    } catch (IOException unwritable) {
      // The list is whole without it.
    }
  }
}
