/**
 * What is made from the table of fields: the JSON Schema and the blank assessment.
 *
 * <p>May use: {@code assessment}, {@code assessment.field}, {@code assessment.quantity}, {@code
 * assessment.read}, {@code assessment.tree}.
 *
 * <p>Begin with {@link hornbook.assessment.form.BlankAssessment}.
 */
package hornbook.assessment.form;
