/**
 * What was not looked at, and what it could still change.
 *
 * <p>May use: {@code advice}, {@code advice.condition}, {@code advice.fact}, {@code assessment},
 * {@code rulebook}.
 *
 * <p>Begin with {@link hornbook.advice.question.Questions}.
 */
package hornbook.advice.question;
