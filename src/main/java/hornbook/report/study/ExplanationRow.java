package hornbook.report.study;

import hornbook.report.page.LineWrap;
import hornbook.report.words.Sentence;
import java.util.ArrayList;
import java.util.List;

/**
 * One statement of an explanation.
 *
 * @param indent columns it stands in
 * @param weight 0 for what has to stay; the greater, the sooner it gives way
 */
record ExplanationRow(int indent, int weight, String text) {
  private static final int STAYS = 0;

  List<String> lines(int width) {
    String space = " ".repeat(indent);
    return LineWrap.lines(indent == 0 ? Sentence.capital(text) : text, width, space, space + "  ");
  }

  /** As many of the rows as fit, in their order; of those that may give way the heaviest first. */
  static List<ExplanationRow> within(int budget, List<ExplanationRow> rows, int width) {
    List<ExplanationRow> left = new ArrayList<>(rows);
    while (height(left, width) > budget) {
      int heaviest = STAYS;
      int at = -1;
      for (int i = 0; i < left.size(); i++) {
        if (left.get(i).weight > STAYS && left.get(i).weight >= heaviest) {
          heaviest = left.get(i).weight;
          at = i;
        }
      }
      if (at < 0) {
        return left;
      }
      left.remove(at);
    }
    return left;
  }

  private static int height(List<ExplanationRow> rows, int width) {
    return rows.stream().mapToInt(row -> row.lines(width).size()).sum();
  }
}
