/**
 * The advice as a result: verdicts with reasons, referrals, findings, cautions, questions.
 *
 * <p>Reasons become verdicts in one place, {@code Verdicts}; the order stands in the contributors'
 * guide.
 *
 * <p>May use: {@code advice.fact}, {@code assessment}, {@code rulebook}.
 *
 * <p>Begin with {@link hornbook.advice.Advice}.
 */
package hornbook.advice;
