package hornbook.report.page;

import java.util.ArrayList;
import java.util.List;

/**
 * Rows in columns. They are as wide as their widest cell; what the last has no room for goes on
 * beneath it. On a screen too narrow for that the widest of the others are broken too, and on one
 * too narrow for columns each row becomes a paragraph.
 */
public final class TextTable {
  private static final int GAP = 2;
  private static final int LEAST_LAST = 24;
  private static final int LEAST = 7;

  private TextTable() {}

  /** The lines of a table whose rows have the same number of cells, so many columns in. */
  public static List<String> lines(List<? extends List<String>> rows, int indent, int width) {
    if (rows.isEmpty()) {
      return List.of();
    }
    int last = rows.get(0).size() - 1;
    int[] columns = new int[last];
    int widest = 0;
    for (List<String> row : rows) {
      for (int i = 0; i < last; i++) {
        columns[i] = Math.max(columns[i], columns(row.get(i)));
      }
      widest = Math.max(widest, columns(row.get(last)));
    }
    int room = width - indent - Math.min(LEAST_LAST, widest);
    while (sum(columns) > room) {
      int at = widest(columns);
      if (columns[at] <= LEAST) {
        return paragraphs(rows, indent, width);
      }
      columns[at]--;
    }
    int before = indent + sum(columns);
    List<String> lines = new ArrayList<>();
    for (List<String> row : rows) {
      lines.addAll(row(row, columns, indent, width - before));
    }
    return lines;
  }

  private static List<String> row(List<String> row, int[] columns, int indent, int room) {
    List<List<String>> cells = new ArrayList<>();
    int height = 0;
    for (int i = 0; i < row.size(); i++) {
      int width = i < columns.length ? columns[i] : room;
      cells.add(LineWrap.lines(row.get(i), Math.max(1, width), "", ""));
      height = Math.max(height, cells.get(i).size());
    }
    List<String> lines = new ArrayList<>();
    for (int at = 0; at < height; at++) {
      StringBuilder line = new StringBuilder(" ".repeat(indent));
      for (int i = 0; i < cells.size(); i++) {
        String part = at < cells.get(i).size() ? cells.get(i).get(at) : "";
        line.append(part);
        if (i < columns.length) {
          line.append(" ".repeat(columns[i] + GAP - columns(part)));
        }
      }
      lines.add(line.toString().stripTrailing());
    }
    return lines;
  }

  private static List<String> paragraphs(List<? extends List<String>> rows, int indent, int width) {
    List<String> lines = new ArrayList<>();
    for (List<String> row : rows) {
      String whole = String.join("; ", row.stream().filter(cell -> !cell.isEmpty()).toList());
      lines.addAll(LineWrap.lines(whole, width, " ".repeat(indent), " ".repeat(indent + GAP)));
    }
    return lines;
  }

  private static int sum(int[] columns) {
    int sum = 0;
    for (int one : columns) {
      sum += one + GAP;
    }
    return sum;
  }

  private static int widest(int[] columns) {
    int widest = 0;
    for (int i = 1; i < columns.length; i++) {
      widest = columns[i] > columns[widest] ? i : widest;
    }
    return widest;
  }

  private static int columns(String text) {
    return text.codePointCount(0, text.length());
  }
}
