package hornbook.record.store;

import hornbook.record.Entry;
import java.nio.file.Path;

/**
 * An entry that is in the book now.
 *
 * @param file where it lies
 */
public record Written(Entry entry, Path file) {}
