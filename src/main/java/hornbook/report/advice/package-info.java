/**
 * The advice as text, JSON, HTML and Markdown.
 *
 * <p>May use: {@code advice}, {@code advice.outcome}, {@code assessment}, {@code foot}, {@code
 * interview}, {@code report.drawing}, {@code report.page}, {@code report.usual}, {@code
 * report.words}, {@code rulebook}.
 *
 * <p>Begin with {@link hornbook.report.advice.Page}.
 */
package hornbook.report.advice;
