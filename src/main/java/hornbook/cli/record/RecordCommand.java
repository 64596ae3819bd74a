package hornbook.cli.record;

import hornbook.cli.base.ExitCode;
import hornbook.cli.base.Failure;
import hornbook.cli.base.Surroundings;
import hornbook.cli.base.Task;
import picocli.CommandLine;

/** The daybook. */
public final class RecordCommand extends Task {

  public RecordCommand(Surroundings surroundings) {
    super(
        surroundings,
        "record",
        "The daybook: what was seen, advised, chosen and done, visit by visit.",
        "",
        "Examples:",
        "  hornbook record add tansy.yaml --chose glue-on --done \"size 5, 2 clips\"",
        "  hornbook record list --horse Tansy",
        "  hornbook record show 12",
        "  hornbook record history --horse Tansy --foot left-fore",
        "  hornbook record export 12 --for owner --format html -o owner.html",
        "  hornbook record verify",
        "",
        "The book is a folder of plain files: --book DIR, or HORNBOOK_BOOK, or else",
        "with your own data. Nothing in it is ever changed.",
        "");
    add(new RecordAddCommand(surroundings));
    add(new RecordListCommand(surroundings));
    add(new RecordShowCommand(surroundings));
    add(new RecordHistoryCommand(surroundings));
    add(new RecordVerifyCommand(surroundings));
    add(new RecordExportCommand(surroundings));
  }

  private void add(Task command) {
    spec().addSubcommand(command.spec().name(), new CommandLine(command.spec()));
  }

  @Override
  public ExitCode run() {
    throw Failure.told(ExitCode.USAGE, spec().commandLine().getUsageMessage());
  }
}
