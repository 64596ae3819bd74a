/**
 * The daybook as a folder of plain files ({@link hornbook.record.store.BookFolder} names them):
 * writing, locking, the chain of digests, checking it.
 *
 * <p>An entry is written aside, files and folder are forced to the disk, and the folder is renamed
 * to its number. A rename onto a folder with something in it fails on every system, so it is both
 * whole and exclusive, with or without a lock; the lock only spares a second try and lets a writer
 * sweep what others left. All writing goes through {@link hornbook.record.store.Disk}, so a test
 * can break it off at every call. The index saves time and is never the truth. {@code
 * -Drecord.kills=1000} and {@code -Drecord.entries=500} make the tests with killed and with several
 * writers that long.
 *
 * <p>May use: {@code assessment}, {@code record}.
 *
 * <p>Begin with {@link hornbook.record.store.EntryWriter}.
 */
package hornbook.record.store;
