/**
 * The commands about the rule base.
 *
 * <p>May use: {@code advice}, {@code assessment}, {@code cli.base}, {@code cli.file}, {@code
 * cli.option}, {@code report}, {@code rulebook}, {@code study}.
 *
 * <p>Begin with {@link hornbook.cli.rules.RulesCommand}.
 */
package hornbook.cli.rules;
