package hornbook.cli.stream;

/**
 * One line of a stream.
 *
 * @param number from 1, empty lines counted
 * @param bytes what stands in it, without its end; of a line that is too long only the beginning
 */
public record Line(long number, byte[] bytes) {}
