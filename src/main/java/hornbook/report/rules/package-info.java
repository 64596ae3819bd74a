/**
 * Rules, limits, checks, coverage and differences of a rule base, as text and JSON.
 *
 * <p>May use: {@code assessment}, {@code report.advice}, {@code report.page}, {@code report.words},
 * {@code rulebook}, {@code study}.
 *
 * <p>Begin with {@link hornbook.report.rules.RulePage}.
 */
package hornbook.report.rules;
