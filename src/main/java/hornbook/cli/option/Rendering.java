package hornbook.cli.option;

import hornbook.advice.Advice;
import hornbook.cli.base.Failure;
import hornbook.cli.file.AssessedFile;
import hornbook.report.advice.AdviceHtml;
import hornbook.report.advice.AdviceJson;
import hornbook.report.advice.AdviceMarkdown;
import hornbook.report.advice.AdviceText;
import hornbook.report.page.TextOptions;
import hornbook.report.words.Detail;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Iterator;
import java.util.function.Function;

/** Puts the advice on one file or several into the form asked for. */
public final class Rendering {
  private final TextOptions options;

  public Rendering(TextOptions options) {
    this.options = options;
  }

  /**
   * Writes the advice on so many files, holding one at a time.
   *
   * @param several whether there is more than one
   */
  public void write(
      FormatOption.Format format, Iterator<AssessedFile> all, boolean several, OutputStream to)
      throws IOException {
    switch (format) {
      case TEXT -> pages(all, several, advice -> AdviceText.render(advice, options), to);
      case MARKDOWN ->
          pages(
              all, several, advice -> AdviceMarkdown.render(advice, options.units(), whole()), to);
      case HTML -> to.write(bytes(page(all.next().advice())));
      case SVG, PDF -> throw new IllegalArgumentException(format.name());
      case JSON -> json(all, several, to);
    }
  }

  /** A page in HTML. */
  public String page(Advice advice) {
    return AdviceHtml.render(advice, options.units(), whole());
  }

  /** A page to keep tells everything unless asked for little. */
  private Detail whole() {
    return options.detail() == Detail.BRIEF ? Detail.BRIEF : Detail.FULL;
  }

  /** Refuses several files where the format holds one. */
  public static void refuseSeveral(FormatOption.Format format, int files) {
    boolean page = format == FormatOption.Format.HTML || format == FormatOption.Format.PDF;
    if (page && files > 1) {
      throw Failure.usage(
          "a page holds one assessment",
          "give one file at a time, or --format markdown for several");
    }
  }

  /** One after the other; with several, each under the name of its file. */
  private static void pages(
      Iterator<AssessedFile> all, boolean several, Function<Advice, String> page, OutputStream to)
      throws IOException {
    for (boolean first = true; all.hasNext(); first = false) {
      AssessedFile one = all.next();
      if (several) {
        to.write(bytes((first ? "" : "\n") + one.file() + ":\n\n"));
      }
      to.write(bytes(page.apply(one.advice())));
    }
  }

  /** One object on many lines; with several one a line, in the order of the files. */
  private void json(Iterator<AssessedFile> all, boolean several, OutputStream to)
      throws IOException {
    boolean brief = options.detail() == Detail.BRIEF;
    while (several && all.hasNext()) {
      AdviceJson.writeLine(all.next().advice(), options.units(), brief, to);
    }
    if (!several) {
      AdviceJson.write(all.next().advice(), options.units(), brief, to);
    }
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }
}
