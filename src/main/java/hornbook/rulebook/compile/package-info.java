/**
 * Turns rules into classes: in the build for the shipped rules, while running for those of others.
 *
 * <p>May use: {@code rulebook}, {@code rulebook.fact}, {@code rulebook.file}, {@code
 * rulebook.load}, {@code rulebook.read}.
 *
 * <p>Begin with {@link hornbook.rulebook.compile.RuleCompiler}.
 */
package hornbook.rulebook.compile;
