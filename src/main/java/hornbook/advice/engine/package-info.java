/**
 * Fires the rules and puts the advice together. With the rulebook the only place that knows the
 * rule engine.
 *
 * <p>May use: {@code advice}, {@code advice.fact}, {@code advice.question}, {@code assessment},
 * {@code rulebook}.
 *
 * <p>Begin with {@link hornbook.advice.engine.Advisor}.
 */
package hornbook.advice.engine;
