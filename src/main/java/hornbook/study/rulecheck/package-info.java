/**
 * Checks a rule base by firing it: cases that fail, and rules that contradict each other.
 *
 * <p>May use: {@code advice}, {@code assessment}, {@code foot}, {@code rulebook}, {@code
 * study.generate}, {@code study.rulecase}.
 *
 * <p>Begin with {@link hornbook.study.rulecheck.FiringCheck}.
 */
package hornbook.study.rulecheck;
