/**
 * What to ask next, and what a typed answer says. Knows no screen and no file.
 *
 * <p>May use: {@code advice}, {@code assessment}, {@code foot}, {@code rulebook}.
 *
 * <p>Begin with {@link hornbook.interview.Interview}.
 */
package hornbook.interview;
