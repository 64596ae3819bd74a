/**
 * Rules of one’s own beside the shipped ones: the head that adds them, and the first files.
 *
 * <p>May use: {@code rulebook}, {@code rulebook.file}, {@code rulebook.load}.
 *
 * <p>Begin with {@link hornbook.rulebook.own.RuleStarter}.
 */
package hornbook.rulebook.own;
