/**
 * Numbers that may be known, known within bounds, or unknown.
 *
 * <p>May use: nothing else of the program.
 *
 * <p>Begin with {@link hornbook.foot.number.Interval}.
 */
package hornbook.foot.number;
