/**
 * The job sheet as text, JSON and Markdown.
 *
 * <p>May use: {@code advice}, {@code assessment}, {@code foot}, {@code plan}, {@code
 * report.advice}, {@code report.drawing}, {@code report.page}, {@code report.words}, {@code
 * rulebook}.
 *
 * <p>Begin with {@link hornbook.report.sheet.PlanPage}.
 */
package hornbook.report.sheet;
