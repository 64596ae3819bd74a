package hornbook.rulebook;

import java.util.Set;

/** A work cited, or what stands for there being none: common practice, or memory. */
public record Source(String key, String author, String title, int year, String where) {
  private static final Set<String> NO_WORK = Set.of("practice", "memory");

  /** Whether the key names a work, and not the ground that there is none. */
  public static boolean work(String key) {
    return !NO_WORK.contains(key);
  }

  /** {@code O'Grady and Burns 2019}, or the key of what is no work. */
  public String brief() {
    return work(key) ? author + " " + year : key;
  }
}
