package hornbook.cli.file;

import hornbook.assessment.tree.Fault;
import hornbook.cli.base.ExitCode;
import hornbook.cli.base.Failure;
import hornbook.report.page.PageWidth;
import java.util.ArrayList;
import java.util.List;

/** Gathers what is wrong with the files of one command, to tell all of it at once. */
public final class FaultsFound {
  private static final String HANGING = "             ";

  private final String hint;
  private final List<String> unread = new ArrayList<>();
  private final StringBuilder blocks = new StringBuilder();
  private int faults;
  private int files;

  public FaultsFound() {
    this("every field with the words it takes: hornbook new");
  }

  /** With a hint of its own at the end. */
  public FaultsFound(String hint) {
    this.hint = hint;
  }

  /** A file that could not be read at all. */
  public void unread(Failure failure) {
    unread.add(failure.text());
  }

  public void in(List<Fault> found) {
    files++;
    faults += found.size();
    found.forEach(this::add);
  }

  private void add(Fault fault) {
    boolean setting = fault.file().startsWith("--");
    String place = setting ? " number " + fault.line() : ":" + fault.line() + ":" + fault.column();
    String path = fault.path().isEmpty() ? "" : "  " + fault.shownPath();
    blocks.append(fault.file()).append(place).append(path).append('\n');
    line("found", fault.found());
    line("allowed", fault.allowed());
    if (fault.nearest() != null) {
      line("nearest", fault.nearest());
    }
  }

  /** A labelled line, wrapped with its text in one column. */
  private void line(String label, String text) {
    int column = HANGING.length();
    blocks.append(("    " + label + HANGING).substring(0, column));
    for (String word : text.split(" ")) {
      if (column > HANGING.length() && column + 1 + word.length() > PageWidth.columns()) {
        blocks.append('\n').append(HANGING);
        column = HANGING.length();
      }
      if (column > HANGING.length()) {
        blocks.append(' ');
        column++;
      }
      blocks.append(word);
      column += word.length();
    }
    blocks.append('\n');
  }

  /**
   * Ends the command if anything was found.
   *
   * @throws Failure with code 66 where a file could not be read, else 65
   */
  public void stopIfAny() {
    if (faults + unread.size() == 0) {
      return;
    }
    String told = String.join("", unread) + blocks;
    if (faults > 0) {
      String where = files > 1 ? " in " + files + " files" : "";
      told += "hornbook: " + counted(faults, "fault") + where + "; nothing was written\n";
      told += "  " + hint + "\n";
    }
    throw Failure.told(unread.isEmpty() ? ExitCode.INVALID_INPUT : ExitCode.NO_INPUT, told);
  }

  private static String counted(int number, String what) {
    return number + " " + what + (number == 1 ? "" : "s");
  }
}
