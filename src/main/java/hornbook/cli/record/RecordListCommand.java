package hornbook.cli.record;

import hornbook.assessment.tree.Nearest;
import hornbook.cli.base.ArgumentValue;
import hornbook.cli.base.ExitCode;
import hornbook.cli.base.Surroundings;
import hornbook.cli.base.Task;
import hornbook.cli.option.ListFormatOption;
import hornbook.cli.option.OutputOption;
import hornbook.record.EntryLine;
import hornbook.record.store.StoredBook;
import hornbook.report.record.BookJson;
import hornbook.report.record.BookText;
import java.util.List;
import java.util.Objects;

/** Lists the entries. */
final class RecordListCommand extends Task {
  private final ArgumentValue<String> horse =
      arguments.text("NAME", "only the entries of this horse", "--horse");
  private final BookOption book = new BookOption(arguments);
  private final ListFormatOption format = new ListFormatOption(arguments);
  private final OutputOption output = new OutputOption(arguments);

  RecordListCommand(Surroundings surroundings) {
    super(
        surroundings,
        "list",
        "List the entries of the daybook in the order they were written.",
        "",
        "Examples:",
        "  hornbook record list",
        "  hornbook record list --horse Tansy",
        "  hornbook record list --format json -o book.json",
        "");
  }

  @Override
  public ExitCode run() {
    StoredBook read = book.book(surroundings);
    List<EntryLine> all = BookReading.of(read::lines);
    List<EntryLine> shown =
        horse.value() == null ? all : all.stream().filter(one -> one.of(horse.value())).toList();
    if (format.json()) {
      output.deliver(BookJson.list(shown), surroundings);
    } else if (shown.isEmpty()) {
      output.deliver(nothing(all), surroundings);
    } else {
      output.deliver(BookText.list(shown), surroundings);
    }
    return ExitCode.DONE;
  }

  private String nothing(List<EntryLine> all) {
    return horse.value() == null ? "No entries yet.\n" : unknown(horse.value(), all) + "\n";
  }

  /** That there is no such horse, and the name it may have been. */
  static String unknown(String name, List<EntryLine> all) {
    List<String> horses =
        all.stream().map(EntryLine::horse).filter(Objects::nonNull).distinct().toList();
    String nearest = Nearest.of(name, horses);
    return "There is no entry of a horse with that name"
        + (nearest == null ? "." : "; nearest: " + nearest + ".");
  }
}
