package hornbook.cli.record;

import hornbook.cli.base.ArgumentValue;
import hornbook.cli.base.ExitCode;
import hornbook.cli.base.Failure;
import hornbook.cli.base.Surroundings;
import hornbook.cli.base.Task;
import hornbook.record.Anonymous;
import hornbook.record.Entry;
import hornbook.record.store.EntryJson;
import hornbook.record.store.StoredBook;
import hornbook.report.record.CalendarPaper;
import hornbook.report.record.EntryPage;
import hornbook.report.record.OwnerSheet;
import hornbook.report.record.RecordJson;
import hornbook.report.record.RecordPage;
import hornbook.report.record.VetLetter;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.function.UnaryOperator;

/** Writes papers about an entry for others. */
final class RecordExportCommand extends Task {
  /** Whom a paper is for. */
  enum Reader {
    VET,
    OWNER,
    CALENDAR
  }

  private final ArgumentValue<String> number =
      arguments.operand("N", "the number of the entry, or the beginning of its digest");
  private final ArgumentValue<Reader> reader =
      arguments.word(
          Reader.class,
          null,
          "a letter to the vet, ten lines for the owner, days for a calendar",
          "--for");
  private final ArgumentValue<Boolean> anonymous =
      arguments.flag("--anonymous", "no names, no words of your own, and days instead of dates");
  private final BookOption book = new BookOption(arguments);
  private final PageOutput output = new PageOutput(arguments);

  RecordExportCommand(Surroundings surroundings) {
    super(
        surroundings,
        "export",
        "Write a letter to the vet, a sheet for the owner or calendar days; without",
        "--for, the entry itself.",
        "",
        "Examples:",
        "  hornbook record export 12 --for vet --format html -o letter.html",
        "  hornbook record export 12 --for owner",
        "  hornbook record export 12 --for calendar -o tansy.ics",
        "  hornbook record export 12 --anonymous --format json",
        "");
  }

  @Override
  public ExitCode run() {
    StoredBook read = book.book(surroundings);
    Entry found = BookReading.of(() -> read.entry(number.value()));
    if (reader.value() == Reader.CALENDAR) {
      output.deliver(calendar(found), surroundings);
      return ExitCode.DONE;
    }
    Entry entry = anonymous.value() ? Anonymous.of(found) : found;
    if (reader.value() == null && output.form() == PageOutput.Form.JSON) {
      output.deliver(
          new String(EntryJson.bytes(entry.content()), StandardCharsets.UTF_8), surroundings);
      return ExitCode.DONE;
    }
    UnaryOperator<String> labels = Labels.of(surroundings.rules().book());
    RecordPage page =
        reader.value() == null
            ? EntryPage.of(entry, 0, output.units(), labels)
            : reader.value() == Reader.VET
                ? VetLetter.of(entry, true, output.units(), labels)
                : OwnerSheet.of(entry, true, labels);
    String about =
        reader.value() == null ? "entry" : reader.value().name().toLowerCase(Locale.ROOT);
    output.deliver(page, RecordJson.PAPER, about, surroundings);
    return ExitCode.DONE;
  }

  private String calendar(Entry entry) {
    if (anonymous.value()) {
      throw Failure.usage(
          "a calendar needs days, and --anonymous takes them away", "leave one of them out");
    }
    if (output.form() != PageOutput.Form.TEXT) {
      throw Failure.usage("a calendar has one form", "leave --format out");
    }
    if (!CalendarPaper.any(entry)) {
      throw Failure.usage(
          "entry " + entry.number() + " has no dates for a calendar",
          entry.visited() == null
              ? "the day of the visit was not noted: visit.date"
              : "nothing was put on, or the vet has to come first");
    }
    return CalendarPaper.render(entry);
  }
}
