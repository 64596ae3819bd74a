package hornbook.report.handbook;

import hornbook.report.advice.AdviceMarkdown;
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
import java.util.List;
import java.util.stream.Collectors;

/** Puts a book into Markdown. */
final class BookMarkdown {
  private final StringBuilder page = new StringBuilder();

  private BookMarkdown() {}

  static String render(Book book) {
    return new BookMarkdown().page(book);
  }

  private String page(Book book) {
    page.append("# ").append(AdviceMarkdown.escaped(book.title())).append('\n');
    book.opening().forEach(line -> page.append('\n').append(of(line)).append('\n'));
    page.append("\n## Contents\n\n");
    int number = 0;
    for (Chapter chapter : book.chapters()) {
      page.append(++number).append(". ").append(link(chapter.title(), chapter.anchor()));
      page.append('\n');
    }
    number = 0;
    for (Chapter chapter : book.chapters()) {
      heading("## ", chapter.anchor(), ++number + " " + chapter.title());
      chapter.blocks().forEach(this::block);
    }
    return page.toString();
  }

  private void heading(String level, String anchor, String text) {
    page.append('\n').append(level).append(anchor(anchor)).append(AdviceMarkdown.escaped(text));
    page.append('\n');
  }

  private void block(Block block) {
    if (block instanceof Heading heading) {
      heading("### ", heading.anchor(), heading.text());
    } else if (block instanceof Paragraph some) {
      page.append('\n').append(of(some.text())).append('\n');
    } else if (block instanceof Lines list) {
      lines(list.ordered() ? "1. " : "- ", list.lines());
    } else if (block instanceof Contents within) {
      lines("- ", within.lines());
    } else if (block instanceof Entry entry) {
      entry(entry);
    } else if (block instanceof Table table) {
      table(table);
    } else if (block instanceof Words words) {
      page.append('\n');
      for (Word word : words.words()) {
        page.append("- ").append(word.anchor() == null ? "" : anchor(word.anchor())).append("**");
        page.append(AdviceMarkdown.escaped(word.word())).append("** ").append(of(word.says()));
        page.append('\n');
      }
    }
  }

  private void lines(String mark, List<RichText> lines) {
    page.append('\n');
    lines.forEach(line -> page.append(mark).append(of(line)).append('\n'));
  }

  private void entry(Entry entry) {
    heading("### ", entry.anchor(), entry.mark() + " " + entry.title());
    entry.said().forEach(line -> page.append("\n> ").append(of(line)).append('\n'));
    page.append('\n');
    for (Part part : entry.parts()) {
      page.append("- **").append(AdviceMarkdown.escaped(part.label())).append("**");
      if (part.lines().size() == 1) {
        page.append(' ').append(of(part.lines().get(0))).append('\n');
      } else {
        page.append('\n');
        part.lines().forEach(line -> page.append("  - ").append(of(line)).append('\n'));
      }
    }
  }

  private void table(Table table) {
    page.append("\n*").append(AdviceMarkdown.escaped(table.caption())).append("*\n\n| ");
    page.append(String.join(" | ", table.head())).append(" |\n|");
    page.append(" --- |".repeat(table.head().size())).append('\n');
    for (Row row : table.rows()) {
      page.append("| ").append(row.anchor() == null ? "" : anchor(row.anchor()));
      page.append(row.cells().stream().map(BookMarkdown::of).collect(Collectors.joining(" | ")));
      page.append(" |\n");
    }
  }

  private static String of(RichText text) {
    StringBuilder line = new StringBuilder();
    for (Piece piece : text.pieces()) {
      String words = AdviceMarkdown.escaped(piece.text());
      if (piece.target() != null) {
        line.append(link(piece.text(), piece.target()));
      } else if (piece.style() == Style.STRONG) {
        line.append("**").append(words).append("**");
      } else if (piece.style() == Style.HOLE) {
        line.append('*').append(words).append('*');
      } else {
        line.append(words);
      }
    }
    return line.toString();
  }

  private static String link(String text, String target) {
    return "[" + AdviceMarkdown.escaped(text) + "](#" + target + ")";
  }

  private static String anchor(String name) {
    return "<a id=\"" + name + "\"></a>";
  }
}
