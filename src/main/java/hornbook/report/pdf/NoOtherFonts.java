package hornbook.report.pdf;

import java.io.IOException;
import java.io.UncheckedIOException;
import org.apache.fontbox.FontBoxFont;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.font.CIDFontMapping;
import org.apache.pdfbox.pdmodel.font.FontMapper;
import org.apache.pdfbox.pdmodel.font.FontMapping;
import org.apache.pdfbox.pdmodel.font.PDCIDSystemInfo;
import org.apache.pdfbox.pdmodel.font.PDFontDescriptor;

/**
 * Answers with our own typeface whatever is asked for. Without it the PDF library goes through
 * every font of the machine, and leaves a list of them in the user's folder.
 */
final class NoOtherFonts implements FontMapper {
  private TrueTypeFont own;

  @Override
  public FontMapping<TrueTypeFont> getTrueTypeFont(String font, PDFontDescriptor descriptor) {
    return new FontMapping<>(own(), true);
  }

  @Override
  public FontMapping<FontBoxFont> getFontBoxFont(String font, PDFontDescriptor descriptor) {
    return new FontMapping<>(own(), true);
  }

  @Override
  public CIDFontMapping getCIDFont(
      String font, PDFontDescriptor descriptor, PDCIDSystemInfo system) {
    return new CIDFontMapping(null, own(), true);
  }

  private TrueTypeFont own() {
    if (own == null) {
      try {
        byte[] bytes =
            Fonts.open(Fonts.SCHEME + ":LiberationSans-Regular").getStream().readAllBytes();
        own = new TTFParser().parse(new RandomAccessReadBuffer(bytes));
      } catch (IOException unreadable) {
        throw new UncheckedIOException(unreadable);
      }
    }
    return own;
  }
}
