package hornbook.report.classroom;

import hornbook.report.advice.AdviceMarkdown;
import java.util.List;
import java.util.stream.Collectors;

/** Writes a page of the classroom as Markdown. */
final class LeafMarkdown {
  private LeafMarkdown() {}

  static String of(Leaf leaf) {
    StringBuilder page = new StringBuilder("# " + escaped(leaf.title()) + "\n");
    Leaf.Block before = null;
    for (Leaf.Block block : leaf.blocks()) {
      boolean runsOn = block instanceof Leaf.Item && before instanceof Leaf.Item;
      page.append(runsOn ? "" : "\n");
      write(block, page);
      before = block;
    }
    return page.toString();
  }

  private static void write(Leaf.Block block, StringBuilder page) {
    if (block instanceof Leaf.Heading heading) {
      page.append("#".repeat(heading.level())).append(' ').append(escaped(heading.text()));
      page.append('\n');
    } else if (block instanceof Leaf.Paragraph paragraph) {
      page.append(escaped(paragraph.text())).append('\n');
    } else if (block instanceof Leaf.Item item) {
      String colon = item.text().isEmpty() ? "" : ":";
      String lead = item.lead().isEmpty() ? "" : "**" + escaped(item.lead()) + colon + "** ";
      page.append("- ").append((lead + escaped(item.text())).strip()).append('\n');
      item.notes().forEach(note -> page.append("  - ").append(escaped(note)).append('\n'));
    } else if (block instanceof Leaf.Facts facts) {
      facts.facts().forEach(fact -> page.append("- ").append(escaped(fact)).append('\n'));
    } else if (block instanceof Leaf.Table table) {
      row(table.head(), page);
      page.append("| --- ".repeat(table.head().size())).append("|\n");
      table.rows().forEach(row -> row(row, page));
    } else if (block instanceof Leaf.Room room) {
      page.append("**").append(escaped(room.question())).append("** ");
      page.append(escaped(room.words())).append("\n\n");
      page.append("\\_\\_\\_\\_\\_\\_\\_\\_\\_\\_\\_\\_\\_\\_\\_\\_\n".repeat(room.lines()));
    } else if (block instanceof Leaf.Command command) {
      page.append("    ").append(command.line()).append('\n');
    }
  }

  private static void row(List<String> cells, StringBuilder page) {
    page.append(
        cells.stream().map(LeafMarkdown::escaped).collect(Collectors.joining(" | ", "| ", " |\n")));
  }

  private static String escaped(String text) {
    return AdviceMarkdown.escaped(text);
  }
}
