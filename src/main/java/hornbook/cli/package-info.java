/**
 * The command line: finds the command, runs it, ends with its exit code.
 *
 * <p>May use: {@code assessment}, {@code cli.base}, {@code cli.classroom}, {@code cli.command},
 * {@code cli.file}, {@code cli.option}, {@code cli.record}, {@code cli.rules}, {@code cli.shell},
 * {@code report}, {@code rulebook}, {@code study}.
 *
 * <p>Begin with {@link hornbook.cli.Hornbook}.
 */
package hornbook.cli;
