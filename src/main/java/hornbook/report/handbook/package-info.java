/**
 * The whole rule base as a book, in HTML and Markdown.
 *
 * <p>{@code Handbook} puts the rule base together as a {@code Book} of chapters, and {@code
 * BookHtml} and {@code BookMarkdown} write it: what is new goes into a chapter and so stands in
 * both. Each rule's case is run for it. {@code HandbookTest} holds it to the rules: nothing left
 * out, no link that leads nowhere, both forms the same word for word.
 *
 * <p>May use: {@code advice}, {@code assessment}, {@code report.advice}, {@code report.page},
 * {@code report.rules}, {@code report.words}, {@code rulebook}, {@code study}.
 *
 * <p>Begin with {@link hornbook.report.handbook.Handbook}.
 */
package hornbook.report.handbook;
