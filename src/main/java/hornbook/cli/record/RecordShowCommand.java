package hornbook.cli.record;

import hornbook.cli.base.ArgumentValue;
import hornbook.cli.base.ExitCode;
import hornbook.cli.base.Surroundings;
import hornbook.cli.base.Task;
import hornbook.cli.option.FormatOption;
import hornbook.cli.option.OutputOption;
import hornbook.cli.option.UnitsOption;
import hornbook.record.Entry;
import hornbook.record.EntryLine;
import hornbook.record.store.EntryJson;
import hornbook.record.store.StoredBook;
import hornbook.report.record.EntryPage;
import java.nio.charset.StandardCharsets;

/** Shows one entry. */
final class RecordShowCommand extends Task {
  private final ArgumentValue<String> number =
      arguments.operand("N", "the number of the entry, or the beginning of its digest");
  private final BookOption book = new BookOption(arguments);
  private final FormatOption format = new FormatOption(arguments);
  private final UnitsOption units = new UnitsOption(arguments);
  private final OutputOption output = new OutputOption(arguments);

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
    if (format.format() == FormatOption.Format.JSON) {
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
    output.deliver(
        Pages.render(
            EntryPage.of(entry, later, units.units(), Labels.of(surroundings.rules().book())),
            format.format(),
            "entry"),
        surroundings);
    return ExitCode.DONE;
  }
}
