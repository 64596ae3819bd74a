/**
 * How each rule condition stands on a foot, fired or silent: holds, fails or unknown.
 *
 * <p>May use: {@code advice.fact}, {@code assessment}, {@code rulebook}.
 *
 * <p>Begin with {@link hornbook.advice.condition.Appraisal}.
 */
package hornbook.advice.condition;
