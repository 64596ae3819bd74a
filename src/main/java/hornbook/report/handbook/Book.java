package hornbook.report.handbook;

import java.util.List;

/**
 * A book as it is written, before it is put into a form: every form says the same.
 *
 * @param opening what stands under the title
 */
record Book(String title, List<RichText> opening, List<Chapter> chapters) {

  /** A chapter; anchors are unique in the book. */
  record Chapter(String anchor, String title, List<Block> blocks) {}

  /** Something in a chapter. */
  sealed interface Block {}

  record Heading(String anchor, String text) implements Block {}

  record Paragraph(RichText text) implements Block {}

  /**
   * Lines of a list.
   *
   * @param ordered whether their order counts
   */
  record Lines(boolean ordered, List<RichText> lines) implements Block {}

  /** Where to find what in the chapter. */
  record Contents(List<RichText> lines) implements Block {}

  /**
   * Something with a name of its own and several things to say of it.
   *
   * @param kind what kind of thing it is, for its looks: a word without spaces
   * @param mark its id
   * @param said what it says, before all else
   */
  record Entry(
      String anchor, String kind, String mark, String title, List<RichText> said, List<Part> parts)
      implements Block {}

  /** What is said of an entry under one label. */
  record Part(String label, List<RichText> lines) {}

  /** A table whose first column names its rows. */
  record Table(String caption, List<String> head, List<Row> rows) implements Block {}

  /**
   * A row of a table.
   *
   * @param anchor where it is found, or null
   */
  record Row(String anchor, List<RichText> cells) {}

  /** Words and what is to be said of them. */
  record Words(List<Word> words) implements Block {}

  /**
   * A word.
   *
   * @param anchor where it is found, or null
   */
  record Word(String anchor, String word, RichText says) {}
}
