/**
 * The daybook as a folder of plain files: writing, locking, the chain of digests, checking it. A
 * visit is a numbered folder that is written aside and moved into place as a whole.
 *
 * <p>May use: {@code assessment}, {@code record}.
 *
 * <p>Begin with {@link hornbook.record.store.BookFolder}.
 */
package hornbook.record.store;
