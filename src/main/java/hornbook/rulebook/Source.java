package hornbook.rulebook;

/** A work cited. */
public record Source(String key, String author, String title, int year, String where) {}
