/**
 * Puts a page of HTML on paper as a PDF. It knows no page in particular, only HTML, and is the one
 * place that knows the PDF library.
 *
 * <p>May use: {@code java} alone.
 *
 * <p>Begin with {@link hornbook.report.pdf.PdfPage}.
 */
package hornbook.report.pdf;
