package hornbook.cli.record;

import hornbook.assessment.Limb;
import hornbook.cli.base.ArgumentValue;
import hornbook.cli.base.ExitCode;
import hornbook.cli.base.Failure;
import hornbook.cli.base.Surroundings;
import hornbook.cli.base.Task;
import hornbook.record.Entry;
import hornbook.record.EntryLine;
import hornbook.record.History;
import hornbook.record.store.StoredBook;
import hornbook.report.record.HistoryPage;
import hornbook.report.record.RecordJson;
import hornbook.report.record.RecordPage;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** Shows the feet of a horse over its visits. */
final class RecordHistoryCommand extends Task {
  private final ArgumentValue<String> horse = arguments.text("NAME", "the horse", "--horse");
  private final ArgumentValue<Limb> foot =
      arguments.word(Limb.class, null, "only this foot", "--foot");
  private final BookOption book = new BookOption(arguments);
  private final PageOutput output = new PageOutput(arguments);

  RecordHistoryCommand(Surroundings surroundings) {
    super(
        surroundings,
        "history",
        "Show the feet of a horse over its visits: measures, defects, lameness, and",
        "whether the wall grows down as the visit before forecast.",
        "",
        "Examples:",
        "  hornbook record history --horse Tansy",
        "  hornbook record history --horse Tansy --foot left-fore --format html",
        "");
  }

  @Override
  public ExitCode run() {
    if (horse.value() == null) {
      throw Failure.usage("--horse is missing", "the horses: hornbook record list");
    }
    StoredBook read = book.book(surroundings);
    List<EntryLine> lines = BookReading.of(read::lines);
    List<Entry> entries = new ArrayList<>();
    for (EntryLine line : lines) {
      if (line.of(horse.value())) {
        entries.add(BookReading.of(() -> read.entry(line.number())));
      }
    }
    if (entries.isEmpty()) {
      throw Failure.of(ExitCode.NO_INPUT, RecordListCommand.unknown(horse.value(), lines));
    }
    Set<Integer> replaced = lines.stream().map(EntryLine::corrects).collect(Collectors.toSet());
    String name = entries.get(entries.size() - 1).horse();
    History history = History.of(name, entries, replaced, foot.value());
    if (history.feet().isEmpty() && history.unread().isEmpty()) {
      throw Failure.usage("no visit of " + name + " has that foot", "leave --foot out");
    }
    RecordPage page =
        HistoryPage.of(history, output.units(), Labels.of(surroundings.rules().book()));
    output.deliver(page, RecordJson.HISTORY, name, surroundings);
    return ExitCode.DONE;
  }
}
