/**
 * The words a field may hold, one enum for each field.
 *
 * <p>May use: nothing else of the program.
 *
 * <p>Begin with {@link hornbook.assessment.word.Word}.
 */
package hornbook.assessment.word;
