/**
 * Teaching cases, answer sheets, critiques, marks and lessons as pages, tables and JSON.
 *
 * <p>May use: {@code advice}, {@code assessment}, {@code report.advice}, {@code report.page},
 * {@code report.words}, {@code rulebook}, {@code study}.
 *
 * <p>Begin with {@link hornbook.report.classroom.Leaf}.
 */
package hornbook.report.classroom;
