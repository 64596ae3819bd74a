package hornbook.cli.record;

import hornbook.cli.base.ArgumentValue;
import hornbook.cli.base.ExitCode;
import hornbook.cli.base.Surroundings;
import hornbook.cli.base.Task;
import hornbook.record.Entry;
import hornbook.record.EntryLine;
import hornbook.record.store.EntryJson;
import hornbook.record.store.StoredBook;
import hornbook.report.record.EntryPage;
import hornbook.report.record.RecordJson;
import hornbook.report.record.RecordPage;
import java.nio.charset.StandardCharsets;

/** Shows one entry. */
final class RecordShowCommand extends Task {
  private final ArgumentValue<String> number =
      arguments.operand("N", "the number of the entry, or the beginning of its digest");
  private final BookOption book = new BookOption(arguments);
  private final PageOutput output = new PageOutput(arguments);

  RecordShowCommand(Surroundings surroundings) {
    super(
        surroundings,
        "show",
        "Show one entry: the choice, the advice as it was given, what was noted.",
        "",
        "Examples:",
        "  hornbook record show 12",
        "  hornbook record show 12 --format html -o entry.html",
        "  hornbook record show 4f2a --format json",
        "");
  }

  @Override
  public ExitCode run() {
    StoredBook read = book.book(surroundings);
    Entry entry = BookReading.of(() -> read.entry(number.value()));
    if (output.form() == PageOutput.Form.JSON) {
      output.deliver(
          new String(EntryJson.bytes(entry.content()), StandardCharsets.UTF_8), surroundings);
      return ExitCode.DONE;
    }
    int later =
        BookReading.of(read::lines).stream()
            .filter(one -> one.corrects() == entry.number())
            .mapToInt(EntryLine::number)
            .max()
            .orElse(0);
    RecordPage page =
        EntryPage.of(entry, later, output.units(), Labels.of(surroundings.rules().book()));
    output.deliver(
        output.draws()
            ? page.with(EntryDrawings.of(entry, surroundings.rules(), output.units()))
            : page,
        RecordJson.PAPER,
        "entry",
        surroundings);
    return ExitCode.DONE;
  }
}
