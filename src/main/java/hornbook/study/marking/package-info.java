/**
 * Marks for answers, by a scheme that is data, and what the marks of a class tell.
 *
 * <p>The numbers stand in {@code cases/marking.yaml}, none here. No point's marks rise by leaving
 * out what is right or adding what is wrong. What cannot be computed of a class is null.
 *
 * <p>May use: {@code advice}, {@code assessment}, {@code rulebook}, {@code study.critique}, {@code
 * study.exercise}.
 *
 * <p>Begin with {@link hornbook.study.marking.Marker}.
 */
package hornbook.study.marking;
