/**
 * Everything known of one foot as the rules meet it, and the path to everything unknown.
 *
 * <p>May use: {@code assessment}, {@code foot}, {@code rulebook}.
 *
 * <p>Begin with {@link hornbook.advice.fact.FactSheets}.
 */
package hornbook.advice.fact;
