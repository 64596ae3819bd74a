/**
 * Rules of one’s own beside the shipped ones: the head that adds them.
 *
 * <p>May use: {@code rulebook}, {@code rulebook.file}, {@code rulebook.load}.
 *
 * <p>Begin with {@link hornbook.rulebook.own.Extension}.
 */
package hornbook.rulebook.own;
