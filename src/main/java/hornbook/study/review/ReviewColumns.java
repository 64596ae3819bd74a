package hornbook.study.review;

import hornbook.assessment.tree.Fault;
import hornbook.assessment.tree.Nearest;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Where the columns of a questionnaire stand. */
final class ReviewColumns {
  private static final List<String> NEEDED =
      List.of("id", "limbs", "age", "agree (yes or no)", "your value", "comment", "your name");

  private final Map<String, Integer> at;

  private ReviewColumns(Map<String, Integer> at) {
    this.at = at;
  }

  /** From the first row; null, with faults, where a column is missing. */
  static ReviewColumns of(List<String> head, String file, List<Fault> faults) {
    Map<String, Integer> at = new LinkedHashMap<>();
    for (int i = 0; i < head.size(); i++) {
      at.putIfAbsent(head.get(i).toLowerCase(Locale.ROOT), i);
    }
    int before = faults.size();
    for (String needed : NEEDED) {
      if (!at.containsKey(needed)) {
        String nearest = Nearest.of(needed, List.copyOf(at.keySet()));
        faults.add(
            new Fault(
                file,
                1,
                1,
                needed,
                "no column \"" + needed + "\"",
                "the first row of: hornbook rules review",
                nearest));
      }
    }
    return faults.size() == before ? new ReviewColumns(at) : null;
  }

  /** The cell of a column in a row; empty where the row is too short. */
  String cell(List<String> row, String column) {
    Integer place = at.get(column);
    return place == null || place >= row.size() ? "" : row.get(place);
  }

  /** The number of a column, from 1. */
  int column(String column) {
    return at.getOrDefault(column, 0) + 1;
  }
}
