/**
 * Lines in, lines out: reads a stream of lines, works on them on all cores, and writes what becomes
 * of them in the same order, holding no more than it is working on. Knows nothing of what they say.
 *
 * <p>May use: nothing of the program.
 *
 * <p>Begin with {@link hornbook.cli.stream.LineStream}.
 */
package hornbook.cli.stream;
