/**
 * The foot before and after: what is added, what it does to length, angle and support.
 *
 * <p>May use: {@code assessment}, {@code foot}, {@code plan.figure}, {@code plan.sheet}, {@code
 * rulebook}.
 *
 * <p>Begin with {@link hornbook.plan.effect.FinishedFoot}.
 */
package hornbook.plan.effect;
