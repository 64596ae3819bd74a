/**
 * The cases of rules: a foot that fires the rule, the change that silences it, its limits
 * bracketed.
 *
 * <p>May use: {@code advice}, {@code assessment}, {@code rulebook}.
 *
 * <p>Begin with {@link hornbook.study.rulecase.RuleCase}.
 */
package hornbook.study.rulecase;
