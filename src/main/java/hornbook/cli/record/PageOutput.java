package hornbook.cli.record;

import hornbook.assessment.quantity.Units;
import hornbook.cli.base.ArgumentValue;
import hornbook.cli.base.Arguments;
import hornbook.cli.base.Surroundings;
import hornbook.cli.option.OutputOption;
import hornbook.cli.option.PdfOption;
import hornbook.cli.option.UnitsOption;
import hornbook.report.record.RecordHtml;
import hornbook.report.record.RecordJson;
import hornbook.report.record.RecordMarkdown;
import hornbook.report.record.RecordPage;
import hornbook.report.record.RecordText;

/** The form of a page of the record, its units, and where it goes. */
final class PageOutput {
  /** The forms there are. */
  enum Form {
    TEXT,
    JSON,
    HTML,
    PDF,
    MARKDOWN
  }

  private final ArgumentValue<Form> form;
  private final UnitsOption units;
  private final OutputOption output;
  private final PdfOption pdf;

  PageOutput(Arguments arguments) {
    form =
        arguments.word(
            Form.class,
            Form.TEXT,
            "plain text, JSON for programs, a page for the browser, a page on paper, or Markdown",
            "--format");
    units = new UnitsOption(arguments);
    output = new OutputOption(arguments);
    pdf = new PdfOption(arguments, output);
  }

  Form form() {
    pdf.only(form.value() == Form.PDF);
    return form.value();
  }

  /** Whether the form can show drawings. */
  boolean draws() {
    return form() == Form.HTML || form() == Form.PDF;
  }

  Units units() {
    return units.units();
  }

  /** Text that is whole as it is. */
  void deliver(String text, Surroundings surroundings) {
    output.deliver(text, surroundings);
  }

  /**
   * The page in the form asked for.
   *
   * @param format the name of its form in JSON
   * @param about whom or what it is about, told in JSON
   */
  void deliver(RecordPage page, String format, String about, Surroundings surroundings) {
    switch (form()) {
      case TEXT -> deliver(RecordText.render(page), surroundings);
      case MARKDOWN -> deliver(RecordMarkdown.render(page), surroundings);
      case HTML -> deliver(RecordHtml.render(page), surroundings);
      case JSON -> deliver(RecordJson.render(page, format, about), surroundings);
      case PDF -> pdf.deliver(RecordHtml.render(page), surroundings);
    }
  }
}
