package hornbook.report.pdf;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.PageSizeUnits;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.svgsupport.BatikSVGDrawer;
import com.openhtmltopdf.util.XRLog;
import java.io.IOException;
import java.io.OutputStream;
import org.apache.pdfbox.pdmodel.font.FontMappers;

/** Writes a page of HTML as a PDF: typefaces embedded, tagged for screen readers. */
public final class PdfPage {
  private static final String PRODUCER = "Hornbook";

  private PdfPage() {}

  /**
   * Writes it. Nothing but the page itself and our own typefaces is read, whatever the page names.
   *
   * @param html well formed, with everything it needs in it
   */
  public static void write(String html, Paper paper, OutputStream out) throws IOException {
    XRLog.setLoggingEnabled(false);
    FontMappers.set(new NoOtherFonts());
    PdfRendererBuilder builder = new PdfRendererBuilder();
    builder.useDefaultPageSize((float) paper.width(), (float) paper.height(), PageSizeUnits.MM);
    builder.usePdfUaAccessibility(true);
    builder.withProducer(PRODUCER);
    builder.useSVGDrawer(new BatikSVGDrawer());
    builder.useUriResolver((base, uri) -> uri.startsWith(Fonts.SCHEME + ":") ? uri : null);
    builder.useProtocolsStreamImplementation(Fonts::open, Fonts.SCHEME);
    builder.withW3cDocument(PaperHtml.of(html), null);
    builder.toStream(out);
    builder.run();
  }
}
