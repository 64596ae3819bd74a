/**
 * The rule base as data, as everyone else sees it: rules, limits, texts, sources, glossary.
 *
 * <p>May use: {@code assessment}, {@code rulebook.fact}, {@code rulebook.reserve}.
 *
 * <p>Begin with {@link hornbook.rulebook.Rulebook}.
 */
package hornbook.rulebook;
