/**
 * The files of a rule base, and what is wrong in them with file, line, rule and fix.
 *
 * <p>May use: {@code assessment}, {@code assessment.tree}, {@code rulebook}.
 *
 * <p>Begin with {@link hornbook.rulebook.file.YamlMap}.
 */
package hornbook.rulebook.file;
