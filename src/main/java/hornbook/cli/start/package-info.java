/**
 * The start-up archive and what it is trained on.
 *
 * <p>May use: {@code cli}, {@code cli.base}.
 *
 * <p>Begin with {@link hornbook.cli.start.StartUpArchive}.
 */
package hornbook.cli.start;
