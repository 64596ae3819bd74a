package hornbook.record;

import java.time.LocalDate;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * What a list of entries shows of one.
 *
 * @param digest of the bytes of its file
 * @param written when, by the clock of that machine; or null
 * @param visited the day of the visit, or null
 * @param chose such as {@code left-fore: glue-on}, several with commas between
 * @param corrects the entry it puts right; 0 for none
 */
public record EntryLine(
    int number,
    String digest,
    String written,
    LocalDate visited,
    String horse,
    String by,
    String chose,
    boolean departs,
    int corrects) {

  public static EntryLine of(Entry entry) {
    return new EntryLine(
        entry.number(),
        entry.digest(),
        entry.written() == null ? null : entry.written().toString(),
        entry.visited(),
        entry.horse(),
        entry.by(),
        chose(entry.chose()),
        entry.departs(),
        entry.corrects() == null ? 0 : entry.corrects());
  }

  private static String chose(Map<String, String> chose) {
    return chose.entrySet().stream()
        .map(one -> one.getKey() + ": " + one.getValue())
        .collect(Collectors.joining(", "));
  }

  /** Whether it is of the horse so called; capitals and blanks at the ends do not count. */
  public boolean of(String name) {
    return horse != null && fold(horse).equals(fold(name));
  }

  private static String fold(String name) {
    return name.strip().toLowerCase(Locale.ROOT);
  }
}
