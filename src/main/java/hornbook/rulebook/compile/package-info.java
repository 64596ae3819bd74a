/**
 * Turns rules into classes: in the build for the shipped rules, while running for those of others.
 *
 * <p>The shipped rules are compiled in the build and again only when rules or the classes they see
 * have changed. Rules of others are compiled alone, into a package of their own, fire beside the
 * shipped model, and are kept in the user's cache under a digest of rules, program and Java.
 *
 * <p>May use: {@code rulebook}, {@code rulebook.fact}, {@code rulebook.file}, {@code
 * rulebook.load}, {@code rulebook.read}.
 *
 * <p>Begin with {@link hornbook.rulebook.compile.RuleCompiler}.
 */
package hornbook.rulebook.compile;
