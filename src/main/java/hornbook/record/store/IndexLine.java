package hornbook.record.store;

import hornbook.record.EntryLine;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.zip.CRC32;

/**
 * A line of the index: what a list shows of an entry, and what its file was like then.
 *
 * @param size bytes of the entry's file
 * @param changed when the file was changed last, in milliseconds
 */
record IndexLine(EntryLine entry, long size, long changed) {
  private static final int FIELDS = 11;
  private static final char BETWEEN = '\t';

  /** With a sum at its end; texts of an entry hold no tabs. */
  String text() {
    StringBuilder line = new StringBuilder();
    add(line, Integer.toString(entry.number()));
    add(line, Long.toString(size));
    add(line, Long.toString(changed));
    add(line, entry.digest());
    add(line, entry.written());
    add(line, entry.visited() == null ? null : entry.visited().toString());
    add(line, entry.horse());
    add(line, entry.by());
    add(line, entry.chose());
    add(line, entry.departs() ? "departs" : "");
    add(line, Integer.toString(entry.corrects()));
    return line.append(sum(line.toString())).append('\n').toString();
  }

  private static void add(StringBuilder line, String field) {
    line.append(field == null ? "" : field).append(BETWEEN);
  }

  /** The line in a text; null where it was torn or altered. */
  static IndexLine of(String text) {
    int end = text.lastIndexOf(BETWEEN) + 1;
    if (end == 0 || !text.substring(end).equals(sum(text.substring(0, end)))) {
      return null;
    }
    String[] fields = new String[FIELDS];
    int from = 0;
    for (int i = 0; i < FIELDS; i++) {
      int to = text.indexOf(BETWEEN, from);
      if (to < 0) {
        return null;
      }
      fields[i] = from == to ? null : text.substring(from, to);
      from = to + 1;
    }
    EntryLine entry =
        new EntryLine(
            Integer.parseInt(fields[0]),
            fields[3],
            fields[4],
            day(fields[5]),
            fields[6],
            fields[7],
            fields[8],
            fields[9] != null,
            Integer.parseInt(fields[10]));
    return new IndexLine(entry, Long.parseLong(fields[1]), Long.parseLong(fields[2]));
  }

  /** Taken apart by hand: a book of ten thousand entries has as many days. */
  private static LocalDate day(String text) {
    if (text == null) {
      return null;
    }
    int year = text.length() - "-00-00".length();
    return LocalDate.of(
        Integer.parseInt(text, 0, year, 10),
        Integer.parseInt(text, year + 1, year + 3, 10),
        Integer.parseInt(text, year + 4, year + 6, 10));
  }

  private static String sum(String fields) {
    CRC32 sum = new CRC32();
    sum.update(fields.getBytes(StandardCharsets.UTF_8));
    return Long.toHexString(sum.getValue());
  }
}
