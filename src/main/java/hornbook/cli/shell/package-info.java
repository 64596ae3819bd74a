/**
 * What a shell and a reader of manuals are given of the command line, made from its own model: the
 * script that completes it, and a manual page for every command.
 *
 * <p>May use: {@code rulebook}, {@code study}.
 *
 * <p>Begin with {@link hornbook.cli.shell.CompletionScript}.
 */
package hornbook.cli.shell;
