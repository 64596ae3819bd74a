/**
 * Checks that the parts of a rule base fit together, from what is written; nothing is run.
 *
 * <p>May use: {@code rulebook}, {@code rulebook.fact}, {@code rulebook.file}.
 *
 * <p>Begin with {@link hornbook.rulebook.check.RulebookCheck}.
 */
package hornbook.rulebook.check;
