package hornbook.report.classroom;

import java.util.ArrayList;
import java.util.List;

/**
 * A page of the classroom, the same for every form: a title and blocks, in the order they are read.
 */
final class Leaf {
  private final String title;
  private final List<Block> blocks = new ArrayList<>();

  Leaf(String title) {
    this.title = title;
  }

  /** What stands on a page. */
  sealed interface Block {}

  /** A heading; level 2 or 3. */
  record Heading(int level, String text, String kind) implements Block {}

  record Paragraph(String text) implements Block {}

  /** A list item: a lead, a sentence, and lines beneath. */
  record Item(String lead, String text, List<String> notes) implements Block {}

  /** Short facts that may stand side by side. */
  record Facts(List<String> facts) implements Block {}

  record Table(List<String> head, List<List<String>> rows) implements Block {}

  /** Something to be answered by hand, with so many lines to write on. */
  record Room(String question, String words, int lines) implements Block {}

  /** A line to copy. */
  record Command(String line) implements Block {}

  Leaf add(Block block) {
    blocks.add(block);
    return this;
  }

  Leaf heading(String text) {
    return add(new Heading(2, text, ""));
  }

  Leaf under(String text) {
    return add(new Heading(3, text, ""));
  }

  Leaf paragraph(String text) {
    return add(new Paragraph(text));
  }

  Leaf item(String lead, String text, List<String> notes) {
    return add(new Item(lead, text, List.copyOf(notes)));
  }

  String title() {
    return title;
  }

  List<Block> blocks() {
    return blocks;
  }
}
