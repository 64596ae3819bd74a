/**
 * Drawings of a foot from its own numbers, as SVG and as text. What was not measured is left out.
 *
 * <p>May use: {@code advice}, {@code assessment}, {@code foot}, {@code plan}, {@code report.page},
 * {@code report.words}, {@code rulebook}.
 *
 * <p>Begin with {@link hornbook.report.drawing.Drawings}.
 */
package hornbook.report.drawing;
