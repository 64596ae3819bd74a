/**
 * How much of a rule base its cases put to the test.
 *
 * <p>May use: {@code advice}, {@code assessment}, {@code rulebook}, {@code study.rulecase}.
 *
 * <p>Begin with {@link hornbook.study.coverage.Coverage}.
 */
package hornbook.study.coverage;
