/**
 * The files of a new rule: its number, its words to begin with, its place and its version.
 *
 * <p>May use: {@code assessment.field}, {@code assessment.quantity}, {@code rulebook}, {@code
 * rulebook.file}, {@code rulebook.load}, {@code rulebook.own}, {@code rulebook.read}.
 *
 * <p>Begin with {@link hornbook.rulebook.start.RuleStarter}.
 */
package hornbook.rulebook.start;
