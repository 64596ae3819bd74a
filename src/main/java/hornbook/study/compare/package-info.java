/**
 * Compares two rule bases: what is written differently, and whose advice changes.
 *
 * <p>May use: {@code advice}, {@code assessment}, {@code rulebook}.
 *
 * <p>Begin with {@link hornbook.study.compare.RulesDiff}.
 */
package hornbook.study.compare;
