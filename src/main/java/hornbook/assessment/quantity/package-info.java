/**
 * Numbers with a unit as people write them, and units as people think in them.
 *
 * <p>May use: {@code assessment.word}.
 *
 * <p>Begin with {@link hornbook.assessment.quantity.Quantity}.
 */
package hornbook.assessment.quantity;
