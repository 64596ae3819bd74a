package hornbook.cli.record;

import hornbook.cli.option.FormatOption;
import hornbook.report.record.RecordHtml;
import hornbook.report.record.RecordJson;
import hornbook.report.record.RecordMarkdown;
import hornbook.report.record.RecordPage;
import hornbook.report.record.RecordText;

/** Puts a page of the record into the form asked for. */
public final class Pages {
  private Pages() {}

  /**
   * @param about whom it is for, told in JSON
   */
  public static String render(RecordPage page, FormatOption.Format format, String about) {
    return switch (format) {
      case TEXT -> RecordText.render(page);
      case MARKDOWN -> RecordMarkdown.render(page);
      case HTML -> RecordHtml.render(page);
      case JSON -> RecordJson.render(page, RecordJson.PAPER, about);
    };
  }
}
