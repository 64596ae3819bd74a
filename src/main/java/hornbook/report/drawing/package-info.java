/**
 * Drawings of a foot from its own numbers, as SVG and as text. What was not measured is left out.
 *
 * <p>{@link hornbook.report.drawing.Drawings} makes a drawing of a picture and the foot with its
 * readings, and the job if there is one. A view puts lines, areas and words on a canvas; what rests
 * on an unknown number is left out there by itself, and the view says so. One unit is a millimetre,
 * y runs upwards, the frame grows with what is drawn. Lines take the colour of the page, so a
 * drawing is dark where its page is; areas differ by their pattern. Corners are found by moving
 * points, the lengths and angles of the side profile by the sine rule: a test compares the two.
 *
 * <p>May use: {@code advice}, {@code assessment}, {@code foot}, {@code plan}, {@code report.page},
 * {@code report.words}, {@code rulebook}.
 *
 * <p>Begin with {@link hornbook.report.drawing.Drawings}.
 */
package hornbook.report.drawing;
