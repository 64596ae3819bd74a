package hornbook.cli.record;

import hornbook.advice.Advice;
import hornbook.assessment.quantity.Units;
import hornbook.assessment.read.ReadResult;
import hornbook.cli.base.ArgumentValue;
import hornbook.cli.base.Arguments;
import hornbook.cli.base.Failure;
import hornbook.cli.option.FormatOption;
import hornbook.record.Anonymous;
import hornbook.record.Entry;
import hornbook.report.record.OwnerSheet;
import hornbook.report.record.RecordHtml;
import hornbook.report.record.RecordJson;
import hornbook.report.record.RecordMarkdown;
import hornbook.report.record.RecordPage;
import hornbook.report.record.RecordText;
import hornbook.report.record.VetLetter;
import java.util.Locale;
import java.util.function.UnaryOperator;

/** A paper for somebody else, straight from an assessment. */
public final class PaperOption {
  /** Whom it is for. */
  enum Reader {
    VET,
    OWNER
  }

  private final ArgumentValue<Reader> reader;
  private final ArgumentValue<Boolean> anonymous;

  public PaperOption(Arguments arguments) {
    reader =
        arguments.word(
            Reader.class, null, "a letter to the vet, or ten lines for the owner", "--for");
    anonymous = arguments.flag("--anonymous", "with --for: no names, and days instead of dates");
  }

  /** Whether a paper is asked for in place of the advice. */
  public boolean given() {
    if (anonymous.value() && reader.value() == null) {
      throw Failure.usage("--anonymous without --for", "say whom it is for: --for vet or owner");
    }
    return reader.value() != null;
  }

  /**
   * The paper; a page for paper comes as HTML. Nothing is recorded as done: the owner's lines are
   * those of the first choice.
   */
  public String render(
      ReadResult.Good read, Advice advice, Units units, FormatOption.Format format) {
    Entry entry = new VisitRecord(read, advice).unwritten();
    Entry told = anonymous.value() ? Anonymous.of(entry) : entry;
    UnaryOperator<String> labels = Labels.of(advice.rulebook());
    RecordPage page =
        reader.value() == Reader.VET
            ? VetLetter.of(told, false, units, labels)
            : OwnerSheet.of(told, false, labels);
    return switch (format) {
      case TEXT, SVG -> RecordText.render(page);
      case MARKDOWN -> RecordMarkdown.render(page);
      case HTML, PDF -> RecordHtml.render(page);
      case JSON ->
          RecordJson.render(page, RecordJson.PAPER, reader.value().name().toLowerCase(Locale.ROOT));
    };
  }
}
