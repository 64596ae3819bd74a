/**
 * What the advice on a foot comes to, without its reasons, for whoever tries thousands of variants.
 *
 * <p>May use: {@code advice}, {@code advice.condition}, {@code advice.engine}, {@code advice.fact},
 * {@code advice.question}, {@code assessment}, {@code rulebook}.
 *
 * <p>Begin with {@link hornbook.advice.engine.OutcomeCache}.
 */
package hornbook.advice.outcome;
