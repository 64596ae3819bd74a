/**
 * The ground edge of the wall as mapped: what is sound, what is missing, where nails fit.
 *
 * <p>May use: {@code assessment}, {@code foot.number}, {@code foot.shape}.
 *
 * <p>Begin with {@link hornbook.foot.wall.WallSurvey}.
 */
package hornbook.foot.wall;
