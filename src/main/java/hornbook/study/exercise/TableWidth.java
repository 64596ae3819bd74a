package hornbook.study.exercise;

import hornbook.assessment.tree.Fault;
import java.util.List;

/** Refuses a table that is wider than any class could need, before it takes up the memory. */
public final class TableWidth {
  private static final int MOST_COLUMNS = 1_000;

  private TableWidth() {}

  /** Whether the table can be read as far as its width goes; a fault is added where it cannot. */
  public static boolean fits(String text, char between, String file, List<Fault> faults) {
    int line = 1;
    int columns = 1;
    for (int at = 0; at < text.length(); at++) {
      char here = text.charAt(at);
      if (here == '\n') {
        line++;
        columns = 1;
      } else if (here == between) {
        columns++;
      }
      if (columns > MOST_COLUMNS) {
        String most = MOST_COLUMNS + " columns";
        faults.add(new Fault(file, line, 1, "", "more than " + most, "up to " + most, null));
        return false;
      }
    }
    return true;
  }
}
