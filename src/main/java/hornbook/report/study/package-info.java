/**
 * Why, contrast and confidence as text and JSON.
 *
 * <p>May use: {@code advice}, {@code assessment}, {@code report.advice}, {@code report.page},
 * {@code report.words}, {@code rulebook}, {@code study}.
 *
 * <p>Begin with {@link hornbook.report.study.ExplanationText}.
 */
package hornbook.report.study;
