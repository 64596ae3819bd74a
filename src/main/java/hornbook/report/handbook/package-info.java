/**
 * The whole rule base as a book, in HTML and Markdown.
 *
 * <p>May use: {@code advice}, {@code assessment}, {@code report.advice}, {@code report.page},
 * {@code report.rules}, {@code report.words}, {@code rulebook}, {@code study}.
 *
 * <p>Begin with {@link hornbook.report.handbook.Handbook}.
 */
package hornbook.report.handbook;
