package hornbook.cli.record;

import hornbook.cli.base.ExitCode;
import hornbook.cli.base.Surroundings;
import hornbook.cli.base.Task;
import hornbook.cli.option.ListFormatOption;
import hornbook.cli.option.OutputOption;
import hornbook.record.store.BookCheck;
import hornbook.record.store.StoredBook;
import hornbook.record.store.Verified;
import hornbook.report.record.BookJson;
import hornbook.report.record.BookText;

/** Checks the book. */
final class RecordVerifyCommand extends Task {
  private final BookOption book = new BookOption(arguments);
  private final ListFormatOption format = new ListFormatOption(arguments);
  private final OutputOption output = new OutputOption(arguments);

  RecordVerifyCommand(Surroundings surroundings) {
    super(
        surroundings,
        "verify",
        "Check the daybook: name every entry that was altered, is missing or is out of",
        "order; then the exit code is 1.",
        "",
        "Examples:",
        "  hornbook record verify",
        "  hornbook record verify --book /media/backup/daybook",
        "");
  }

  @Override
  public ExitCode run() {
    StoredBook read = book.book(surroundings);
    Verified verified = BookReading.of(() -> BookCheck.verify(read.folder()));
    output.deliver(
        format.json() ? BookJson.verified(verified) : BookText.verified(verified), surroundings);
    return verified.whole() ? ExitCode.DONE : ExitCode.RECORD_FAULTY;
  }
}
