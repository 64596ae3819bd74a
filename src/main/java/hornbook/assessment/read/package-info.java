/**
 * Reads and checks an assessment or a case file, and changes single fields for one run.
 *
 * <p>May use: {@code assessment}, {@code assessment.field}, {@code assessment.quantity}, {@code
 * assessment.tree}.
 *
 * <p>Begin with {@link hornbook.assessment.read.AssessmentReader}.
 */
package hornbook.assessment.read;
