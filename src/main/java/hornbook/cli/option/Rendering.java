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
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.function.Function;

/** Puts the advice on one file or several into the form asked for. */
public final class Rendering {
  private final TextOptions options;

  public Rendering(TextOptions options) {
    this.options = options;
  }

  public String of(FormatOption.Format format, List<AssessedFile> assessed) {
    return switch (format) {
      case TEXT -> pages(assessed, advice -> AdviceText.render(advice, options));
      case MARKDOWN ->
          pages(assessed, advice -> AdviceMarkdown.render(advice, options.units(), whole()));
      case HTML, PDF -> page(assessed);
      case SVG -> throw new IllegalArgumentException("a drawing shows one foot");
      case JSON -> json(assessed.stream().map(AssessedFile::advice).toList());
    };
  }

  /** A page to keep tells everything unless asked for little. */
  private Detail whole() {
    return options.detail() == Detail.BRIEF ? Detail.BRIEF : Detail.FULL;
  }

  /** One after the other; with several, each under the name of its file. */
  private static String pages(List<AssessedFile> assessed, Function<Advice, String> page) {
    StringBuilder pages = new StringBuilder();
    for (AssessedFile one : assessed) {
      if (assessed.size() > 1) {
        pages.append(pages.isEmpty() ? "" : "\n").append(one.file()).append(":\n\n");
      }
      pages.append(page.apply(one.advice()));
    }
    return pages.toString();
  }

  private String page(List<AssessedFile> assessed) {
    if (assessed.size() > 1) {
      throw Failure.usage(
          "a page holds one assessment",
          "give one file at a time, or --format markdown for several");
    }
    return AdviceHtml.render(assessed.get(0).advice(), options.units(), whole());
  }

  /** One object; with several an array of them, in the order of the files. */
  private String json(List<Advice> advice) {
    ByteArrayOutputStream json = new ByteArrayOutputStream();
    try {
      if (advice.size() == 1) {
        AdviceJson.write(advice.get(0), options.units(), json);
      } else {
        AdviceJson.writeAll(advice, options.units(), json);
      }
    } catch (IOException never) {
      throw new UncheckedIOException(never);
    }
    return json.toString(StandardCharsets.UTF_8);
  }
}
