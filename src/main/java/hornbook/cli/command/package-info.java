/**
 * The commands about one assessment.
 *
 * <p>May use: {@code advice}, {@code assessment}, {@code cli.base}, {@code cli.dialogue}, {@code
 * cli.file}, {@code cli.option}, {@code cli.record}, {@code cli.stream}, {@code plan}, {@code
 * report}, {@code rulebook}, {@code study}.
 *
 * <p>Begin with {@link hornbook.cli.command.AssessCommand}.
 */
package hornbook.cli.command;
