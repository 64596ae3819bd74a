/**
 * The one table of all fields: name, kind, label, how to look. Checks, schema, blank file and rules
 * all come from it.
 *
 * <p>May use: {@code assessment}, {@code assessment.quantity}, {@code assessment.tree}, {@code
 * assessment.word}.
 *
 * <p>Begin with {@link hornbook.assessment.field.Fields}.
 */
package hornbook.assessment.field;
