/**
 * Fires the rules and puts the advice together.
 *
 * <p>May use: {@code advice}, {@code advice.fact}, {@code advice.question}, {@code assessment},
 * {@code rulebook}.
 *
 * <p>Begin with {@link hornbook.advice.engine.Advisor}.
 */
package hornbook.advice.engine;
