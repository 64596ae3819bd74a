/**
 * Drawings of a foot from its own numbers, as text and as SVG.
 *
 * <p>May use: {@code advice}, {@code assessment}, {@code foot}, {@code plan}, {@code report.page},
 * {@code report.words}.
 *
 * <p>Begin with {@link hornbook.report.drawing.FootDrawing}.
 */
package hornbook.report.drawing;
