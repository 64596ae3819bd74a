/**
 * What runs in a process of its own: the start-up archive and what it is trained on, and the making
 * of PDF.
 *
 * <p>The launcher looks for a start-up archive made for this build of Java and this place of the
 * program, in lib, else in the user's cache. If there is none it starts without, and {@code
 * StartUpArchive} makes one in the background for the next time; {@code HORNBOOK_ARCHIVE=off}
 * leaves that out. How Java is started stands in lib/java.options, and in jsa.options or
 * aot.options, by the archive it takes.
 *
 * <p>May use: {@code cli}, {@code cli.base}, {@code report}.
 *
 * <p>Begin with {@link hornbook.cli.start.StartUpArchive}.
 */
package hornbook.cli.start;
