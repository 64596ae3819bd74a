/**
 * A local practice: reads it, checks it against the rule base, and moves limits as it says.
 *
 * <p>The rule base as a practice has it is a rule base like any other: what comes after needs to
 * know nothing of it. {@code MovedLimits} tells which moved limits touch a foot.
 *
 * <p>May use: {@code assessment}, {@code assessment.quantity}, {@code rulebook}, {@code
 * rulebook.fact}.
 *
 * <p>Begin with {@link hornbook.rulebook.practice.PracticeReader}.
 */
package hornbook.rulebook.practice;
