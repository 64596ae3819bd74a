package hornbook.rulebook;

import java.io.Serializable;

/** A work cited. */
public record Source(String key, String author, String title, int year, String where)
    implements Serializable {}
