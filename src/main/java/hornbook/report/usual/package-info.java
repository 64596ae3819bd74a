/**
 * What of the advice stands on the usual page: the cautions, questions and measurements that count
 * today.
 *
 * <p>May use: {@code advice}, {@code advice.fact}, {@code assessment.word}, {@code report.words},
 * {@code rulebook}, {@code rulebook.fact}.
 *
 * <p>Begin with {@link hornbook.report.usual.CautionsShown}.
 */
package hornbook.report.usual;
