package hornbook.cli.start;

import hornbook.report.pdf.Paper;
import hornbook.report.pdf.PdfPage;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.logging.LogManager;

/**
 * Makes a PDF in a process of its own: a page of HTML comes in, the PDF goes out. So the libraries
 * for it and the memory they take burden no other command.
 */
public final class PdfProcess {
  private PdfProcess() {}

  /** Takes the name of the paper. */
  public static void main(String[] arguments) throws IOException {
    LogManager.getLogManager().reset();
    String html = new String(System.in.readAllBytes(), StandardCharsets.UTF_8);
    try (OutputStream out = new BufferedOutputStream(System.out)) {
      PdfPage.write(html, Paper.valueOf(arguments[0]), out);
    }
  }
}
