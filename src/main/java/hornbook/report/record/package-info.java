/**
 * Pages of the daybook: an entry, the history of a foot, letters and sheets for others, as text,
 * Markdown, HTML and JSON. All forms are made from one page of parts.
 *
 * <p>May use: {@code assessment}, {@code foot}, {@code record}, {@code record.store}, {@code
 * report.advice}, {@code report.drawing}, {@code report.page}, {@code report.words}, {@code
 * rulebook}.
 *
 * <p>Begin with {@link hornbook.report.record.RecordPage}.
 */
package hornbook.report.record;
