package hornbook.report.classroom;

import hornbook.report.page.Markup;
import hornbook.report.page.PageFrame;
import java.util.List;

/** Writes pages of the classroom for the browser and the printer; they need nothing beside them. */
final class LeafHtml {
  private static final String STYLE = "/hornbook/report/classroom/classroom.css";

  /** Facts of more characters do not stand side by side. */
  private static final int SHORT = 38;

  private final Markup page = new Markup();

  /** How far the headings of a leaf lie below its title. */
  private final int below;

  private LeafHtml(int below) {
    this.below = below;
  }

  /** One page. */
  static String of(Leaf leaf) {
    LeafHtml html = new LeafHtml(0);
    html.begin(leaf.title());
    html.page.open("main").line().element("h1", leaf.title()).line();
    html.blocks(leaf.blocks());
    return html.end();
  }

  /** One after the other; each begins on a page of its own when printed. */
  static String of(String title, List<Leaf> leaves) {
    LeafHtml html = new LeafHtml(1);
    html.begin(title);
    html.page.open("header").element("h1", title).close("header").line();
    html.page.open("main").line();
    for (Leaf leaf : leaves) {
      html.page.open("article").line().element("h2", leaf.title()).line();
      html.blocks(leaf.blocks());
      html.page.close("article").line();
    }
    return html.end();
  }

  private void begin(String title) {
    String screen = PageFrame.style("page.css") + PageFrame.style(STYLE);
    PageFrame.begin(page, title, List.of(screen, PageFrame.printed(title)));
  }

  private String end() {
    page.close("main").line();
    PageFrame.end(page);
    return page.toString();
  }

  private void blocks(List<Leaf.Block> blocks) {
    boolean list = false;
    for (Leaf.Block block : blocks) {
      boolean item = block instanceof Leaf.Item;
      if (list && !item) {
        page.close("ul").line();
      } else if (item && !list) {
        page.open("ul").line();
      }
      list = item;
      write(block);
    }
    if (list) {
      page.close("ul").line();
    }
  }

  private void write(Leaf.Block block) {
    if (block instanceof Leaf.Heading heading) {
      String kind = heading.kind().isEmpty() ? "plain" : heading.kind();
      page.element("h" + (heading.level() + below), heading.text(), "class", kind).line();
    } else if (block instanceof Leaf.Paragraph paragraph) {
      page.element("p", paragraph.text(), "class", "text").line();
    } else if (block instanceof Leaf.Item item) {
      item(item);
    } else if (block instanceof Leaf.Facts facts) {
      page.open("ul", "class", "facts").line();
      facts.facts().forEach(this::fact);
      page.close("ul").line();
    } else if (block instanceof Leaf.Table table) {
      table(table);
    } else if (block instanceof Leaf.Room room) {
      room(room);
    } else if (block instanceof Leaf.Command command) {
      page.open("p").element("code", command.line()).close("p").line();
    }
  }

  private void fact(String fact) {
    page.element("li", fact, "class", fact.length() > SHORT ? "long" : "short").line();
  }

  private void item(Leaf.Item item) {
    page.open("li");
    if (!item.lead().isEmpty()) {
      page.element("strong", item.lead() + (item.text().isEmpty() ? "" : ":")).text(" ");
    }
    page.text(item.text());
    item.notes().forEach(note -> page.element("p", note));
    page.close("li").line();
  }

  private void room(Leaf.Room room) {
    page.open("div", "class", "room").open("p").element("strong", room.question());
    page.text(room.words().isEmpty() ? "" : " " + room.words()).close("p");
    for (int line = 0; line < room.lines(); line++) {
      page.element("div", "", "class", "line");
    }
    page.close("div").line();
  }

  /** Cells carry the head of their column, for screens too narrow to show it above them. */
  private void table(Leaf.Table table) {
    page.open("table").open("thead").open("tr");
    table.head().forEach(cell -> page.element("th", cell, "scope", "col"));
    page.close("tr").close("thead").open("tbody").line();
    for (List<String> row : table.rows()) {
      page.open("tr").element("th", row.get(0), "scope", "row");
      for (int at = 1; at < row.size(); at++) {
        page.element("td", row.get(at), "data-label", table.head().get(at));
      }
      page.close("tr").line();
    }
    page.close("tbody").close("table").line();
  }
}
