/**
 * Reads a folder of rules into a rule base: rule files, texts, limits, findings, sources.
 *
 * <p>May use: {@code assessment}, {@code rulebook}, {@code rulebook.check}, {@code rulebook.fact},
 * {@code rulebook.file}, {@code rulebook.own}.
 *
 * <p>Begin with {@link hornbook.rulebook.read.RulebookReader}.
 */
package hornbook.rulebook.read;
