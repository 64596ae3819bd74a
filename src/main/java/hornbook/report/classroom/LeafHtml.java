package hornbook.report.classroom;

import hornbook.report.page.Markup;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** Writes pages of the classroom for the browser and the printer; they need nothing beside them. */
final class LeafHtml {
  private static final String STYLE = "/hornbook/report/classroom/classroom.css";

  private LeafHtml() {}

  /** One after the other; each begins on a page of its own when printed. */
  static String of(List<Leaf> leaves) {
    Markup page = new Markup();
    page.raw("<!DOCTYPE html>\n").open("html", "lang", "en-GB").line().open("head").line();
    page.empty("meta", "charset", "utf-8").line();
    page.empty("meta", "name", "viewport", "content", "width=device-width, initial-scale=1").line();
    page.element("title", leaves.get(0).title()).line();
    page.open("style").line().raw(style()).close("style").line();
    page.close("head").line().open("body").line();
    for (Leaf leaf : leaves) {
      page.open("article").line().element("h1", leaf.title()).line();
      leaf(leaf.blocks(), page);
      page.close("article").line();
    }
    return page.close("body").line().close("html").line().toString();
  }

  private static void leaf(List<Leaf.Block> blocks, Markup page) {
    boolean list = false;
    for (Leaf.Block block : blocks) {
      boolean item = block instanceof Leaf.Item;
      if (list && !item) {
        page.close("ul").line();
      } else if (item && !list) {
        page.open("ul").line();
      }
      list = item;
      write(block, page);
    }
    if (list) {
      page.close("ul").line();
    }
  }

  private static void write(Leaf.Block block, Markup page) {
    if (block instanceof Leaf.Heading heading) {
      String kind = heading.kind().isEmpty() ? "plain" : heading.kind();
      page.element("h" + heading.level(), heading.text(), "class", kind).line();
    } else if (block instanceof Leaf.Paragraph paragraph) {
      page.element("p", paragraph.text()).line();
    } else if (block instanceof Leaf.Item item) {
      page.open("li");
      if (!item.lead().isEmpty()) {
        page.element("strong", item.lead() + (item.text().isEmpty() ? "" : ":")).text(" ");
      }
      page.text(item.text());
      item.notes().forEach(note -> page.element("p", note));
      page.close("li").line();
    } else if (block instanceof Leaf.Facts facts) {
      page.open("ul", "class", "facts").line();
      facts.facts().forEach(fact -> page.element("li", fact).line());
      page.close("ul").line();
    } else if (block instanceof Leaf.Table table) {
      table(table, page);
    } else if (block instanceof Leaf.Room room) {
      page.open("div", "class", "room").open("p").element("strong", room.question());
      page.text(room.words().isEmpty() ? "" : " " + room.words()).close("p");
      for (int line = 0; line < room.lines(); line++) {
        page.element("div", "", "class", "line");
      }
      page.close("div").line();
    } else if (block instanceof Leaf.Command command) {
      page.open("p").element("code", command.line()).close("p").line();
    } else {
      page.element("div", "", "class", "new-page").line();
    }
  }

  private static void table(Leaf.Table table, Markup page) {
    page.open("table").open("thead").open("tr");
    table.head().forEach(cell -> page.element("th", cell, "scope", "col"));
    page.close("tr").close("thead").open("tbody").line();
    for (List<String> row : table.rows()) {
      page.open("tr");
      row.forEach(cell -> page.element("td", cell));
      page.close("tr").line();
    }
    page.close("tbody").close("table").line();
  }

  private static String style() {
    try (InputStream css = LeafHtml.class.getResourceAsStream(STYLE)) {
      return new String(css.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException unreadable) {
      throw new UncheckedIOException(unreadable);
    }
  }
}
