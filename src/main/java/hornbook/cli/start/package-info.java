/**
 * What runs in a process of its own: the start-up archive and what it is trained on, and the making
 * of PDF.
 *
 * <p>May use: {@code cli}, {@code cli.base}, {@code report}.
 *
 * <p>Begin with {@link hornbook.cli.start.StartUpArchive}.
 */
package hornbook.cli.start;
