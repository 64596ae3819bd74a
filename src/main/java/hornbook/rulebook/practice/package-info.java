/**
 * A local practice: reads it, checks it against the rule base, and moves limits as it says.
 *
 * <p>May use: {@code assessment}, {@code rulebook}, {@code rulebook.fact}.
 *
 * <p>Begin with {@link hornbook.rulebook.practice.PracticeReader}.
 */
package hornbook.rulebook.practice;
