/**
 * Makes up feet to run rules over, from a seed.
 *
 * <p>May use: {@code assessment}, {@code rulebook}.
 *
 * <p>Begin with {@link hornbook.study.generate.GeneratedFeet}.
 */
package hornbook.study.generate;
