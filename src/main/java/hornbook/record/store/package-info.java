/**
 * The daybook as a folder of plain files: writing, locking, the chain of digests, checking it.
 *
 * <p>A visit is a numbered folder that is written aside and moved into place as a whole. It may use
 * {@code hornbook.record} and nothing above. Begin with {@link hornbook.record.store.BookFolder}.
 */
package hornbook.record.store;
