/**
 * Asks experienced people about each limit, and adds up what they answer.
 *
 * <p>May use: {@code assessment}, {@code rulebook}.
 *
 * <p>Begin with {@link hornbook.study.review.Review}.
 */
package hornbook.study.review;
