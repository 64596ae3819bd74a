package hornbook.report.classroom;

import hornbook.report.page.PageWidth;
import hornbook.report.page.PlainPage;
import hornbook.report.page.TextTable;
import java.util.ArrayList;
import java.util.List;

/** Writes a page of the classroom as plain text as wide as the screen. */
final class LeafText {
  private LeafText() {}

  static String of(Leaf leaf) {
    PlainPage page = new PlainPage();
    page.heading(leaf.title());
    Leaf.Block before = null;
    for (Leaf.Block block : leaf.blocks()) {
      boolean text = block instanceof Leaf.Paragraph || block instanceof Leaf.Table;
      boolean follows =
          before instanceof Leaf.Item
              || before instanceof Leaf.Paragraph
              || before instanceof Leaf.Table
              || before instanceof Leaf.Facts;
      if (text && follows) {
        page.asIs(0, "");
      }
      write(block, page);
      before = block;
    }
    return page.text();
  }

  private static void write(Leaf.Block block, PlainPage page) {
    if (block instanceof Leaf.Heading heading) {
      page.heading(heading.level() == 2 ? upper(heading.text()) : heading.text());
    } else if (block instanceof Leaf.Paragraph paragraph) {
      page.paragraph(0, paragraph.text());
    } else if (block instanceof Leaf.Item item) {
      String both = item.lead().isEmpty() || item.text().isEmpty() ? "" : ": ";
      page.hanging(0, 2, "- " + item.lead() + both + item.text());
      item.notes().forEach(note -> page.hanging(2, 4, note));
    } else if (block instanceof Leaf.Facts facts) {
      page.hanging(2, 2, String.join("; ", facts.facts()) + ".");
    } else if (block instanceof Leaf.Table table) {
      lines(table).forEach(line -> page.asIs(0, line));
    } else if (block instanceof Leaf.Room room) {
      page.hanging(0, 2, room.question() + (room.words().isEmpty() ? "" : ": " + room.words()));
      for (int line = 0; line < room.lines(); line++) {
        page.asIs(2, "_".repeat(PageWidth.columns() - 4));
      }
    } else if (block instanceof Leaf.Command command) {
      page.asIs(2, command.line());
    }
  }

  private static String upper(String text) {
    return text.toUpperCase(java.util.Locale.ROOT);
  }

  private static List<String> lines(Leaf.Table table) {
    List<List<String>> all = new ArrayList<>(List.of(table.head()));
    all.addAll(table.rows());
    return TextTable.lines(all, 0, PageWidth.columns());
  }
}
