/**
 * What every command needs: arguments, exit codes, failures in plain words, the surroundings.
 *
 * <p>Options are calls, not annotations: reading those by reflection costs a cold start a tenth of
 * a second. What cannot be done as asked is thrown as a {@code Failure}: what is wrong, then where
 * it is and what to do. {@code Hornbook} is the one place that prints it, and the one place that
 * catches what nobody foresaw (code 70). Only {@code Surroundings} knows the streams, the
 * environment and the program's folder.
 *
 * <p>May use: {@code assessment}, {@code report}, {@code rulebook}.
 *
 * <p>Begin with {@link hornbook.cli.base.Task}.
 */
package hornbook.cli.base;
