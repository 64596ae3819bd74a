/**
 * Puts a page of HTML on paper as a PDF. It knows no page in particular, only HTML, and is the one
 * place that knows the PDF library.
 *
 * <p>A page of HTML is well-formed XML. Its first style sheet gives way to {@code paper.css}; later
 * ones are kept. The PDF library knows no variables, flex or grid. It runs in a process of its own
 * with {@code lib/pdf} on its class path, so that no other command carries it.
 *
 * <p>May use: {@code java} alone.
 *
 * <p>Begin with {@link hornbook.report.pdf.PdfPage}.
 */
package hornbook.report.pdf;
