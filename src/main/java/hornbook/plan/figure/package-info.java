/**
 * Numbers of a job sheet with the formula, measures and limits they came from.
 *
 * <p>May use: {@code assessment}, {@code foot}, {@code rulebook}.
 *
 * <p>Begin with {@link hornbook.plan.figure.Figure}.
 */
package hornbook.plan.figure;
