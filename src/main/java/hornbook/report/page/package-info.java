/**
 * Layout without trade words: sections, wrapped text, HTML markup, JSON.
 *
 * <p>May use: {@code assessment}, {@code report.words}.
 *
 * <p>Begin with {@link hornbook.report.page.Section}.
 */
package hornbook.report.page;
