/**
 * Marks for answers, by a scheme that is data, and what the marks of a class tell.
 *
 * <p>May use: {@code assessment}, {@code study.critique}, {@code study.exercise}.
 *
 * <p>Begin with {@link hornbook.study.marking.Marker}.
 */
package hornbook.study.marking;
