package hornbook.report.handbook;

import hornbook.report.handbook.Book.Block;
import hornbook.report.handbook.Book.Chapter;
import hornbook.report.handbook.Book.Contents;
import hornbook.report.handbook.Book.Entry;
import hornbook.report.handbook.Book.Heading;
import hornbook.report.handbook.Book.Lines;
import hornbook.report.handbook.Book.Paragraph;
import hornbook.report.handbook.Book.Part;
import hornbook.report.handbook.Book.Row;
import hornbook.report.handbook.Book.Table;
import hornbook.report.handbook.Book.Word;
import hornbook.report.handbook.Book.Words;
import hornbook.report.handbook.RichText.Piece;
import hornbook.report.handbook.RichText.Style;
import hornbook.report.page.Markup;
import hornbook.report.page.PageFrame;
import java.util.List;

/** Puts a book into one page that needs nothing beside it, for a screen and for paper. */
final class BookHtml {
  private final Markup page = new Markup();

  private BookHtml() {}

  static String render(Book book) {
    return new BookHtml().page(book);
  }

  private String page(Book book) {
    PageFrame.begin(page, book.title(), List.of(PageFrame.style("book.css")));
    page.element("a", "To the contents", "class", "skip", "href", "#contents").line();
    page.open("header").element("h1", book.title()).line();
    book.opening().forEach(line -> paragraph(line, "p"));
    page.close("header").line();
    page.open("nav", "id", "contents", "aria-labelledby", "contents-title").line();
    page.element("h2", "Contents", "id", "contents-title").open("ol").line();
    for (Chapter chapter : book.chapters()) {
      page.open("li").element("a", chapter.title(), "href", "#" + chapter.anchor()).close("li");
      page.line();
    }
    page.close("ol").close("nav").line().open("main").line();
    int number = 0;
    for (Chapter chapter : book.chapters()) {
      number++;
      page.open("section", "class", "chapter", "id", chapter.anchor()).line().open("h2");
      page.element("span", number + " ", "class", "number").text(chapter.title());
      page.close("h2").line();
      chapter.blocks().forEach(this::block);
      page.element("a", "Back to the contents", "class", "back", "href", "#contents");
      page.close("section").line();
    }
    page.close("main").line();
    PageFrame.end(page);
    return page.toString();
  }

  private void block(Block block) {
    if (block instanceof Heading heading) {
      page.element("h3", heading.text(), "id", heading.anchor()).line();
    } else if (block instanceof Paragraph some) {
      paragraph(some.text(), "p");
    } else if (block instanceof Lines list) {
      lines(list.ordered() ? "ol" : "ul", "lines", list.lines());
    } else if (block instanceof Contents within) {
      lines("ul", "within", within.lines());
    } else if (block instanceof Entry entry) {
      entry(entry);
    } else if (block instanceof Table table) {
      table(table);
    } else if (block instanceof Words words) {
      page.open("dl", "class", "words").line();
      words.words().forEach(this::word);
      page.close("dl").line();
    }
  }

  private void paragraph(RichText text, String element) {
    page.open(element);
    rich(text);
    page.close(element).line();
  }

  private void lines(String list, String look, List<RichText> lines) {
    page.open(list, "class", look).line();
    lines.forEach(line -> paragraph(line, "li"));
    page.close(list).line();
  }

  private void entry(Entry entry) {
    page.open("article", "class", "entry " + entry.kind(), "id", entry.anchor()).line().open("h3");
    page.element("span", entry.mark(), "class", "mark").text(" " + entry.title());
    page.close("h3").line();
    for (RichText line : entry.said()) {
      page.open("p", "class", "said");
      rich(line);
      page.close("p").line();
    }
    page.open("dl").line();
    for (Part part : entry.parts()) {
      page.open("div").element("dt", part.label());
      part.lines().forEach(line -> paragraph(line, "dd"));
      page.close("div").line();
    }
    page.close("dl").close("article").line();
  }

  private void table(Table table) {
    page.open("table").element("caption", table.caption()).line().open("thead").open("tr");
    table.head().forEach(cell -> page.element("th", cell, "scope", "col"));
    page.close("tr").close("thead").line().open("tbody").line();
    for (Row row : table.rows()) {
      if (row.anchor() == null) {
        page.open("tr");
      } else {
        page.open("tr", "id", row.anchor());
      }
      page.open("th", "scope", "row");
      rich(row.cells().get(0));
      page.close("th");
      for (int at = 1; at < row.cells().size(); at++) {
        page.open("td", "data-label", table.head().get(at));
        rich(row.cells().get(at));
        page.close("td");
      }
      page.close("tr").line();
    }
    page.close("tbody").close("table").line();
  }

  private void word(Word word) {
    page.open("div");
    if (word.anchor() == null) {
      page.element("dt", word.word());
    } else {
      page.element("dt", word.word(), "id", word.anchor());
    }
    paragraph(word.says(), "dd");
    page.close("div").line();
  }

  private void rich(RichText text) {
    for (Piece piece : text.pieces()) {
      if (piece.target() != null) {
        page.element("a", piece.text(), "href", "#" + piece.target());
      } else if (piece.style() == Style.PLAIN) {
        page.text(piece.text());
      } else {
        page.element(piece.style() == Style.STRONG ? "strong" : "em", piece.text());
      }
    }
  }
}
