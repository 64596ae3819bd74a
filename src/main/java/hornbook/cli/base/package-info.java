/**
 * What every command needs: arguments, exit codes, failures in plain words, the surroundings.
 *
 * <p>May use: {@code assessment}, {@code rulebook}.
 *
 * <p>Begin with {@link hornbook.cli.base.Task}.
 */
package hornbook.cli.base;
