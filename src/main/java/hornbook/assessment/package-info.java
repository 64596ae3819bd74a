/**
 * The records of one visit as written down: horse, visit, feet, wall, cracks. Null means not looked
 * at.
 *
 * <p>May use: {@code assessment.quantity}, {@code assessment.word}.
 *
 * <p>Begin with {@link hornbook.assessment.Assessment}.
 */
package hornbook.assessment;
