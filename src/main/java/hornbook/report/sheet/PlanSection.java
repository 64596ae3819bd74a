package hornbook.report.sheet;

import java.util.List;

/** One part of a job sheet: a heading, and what stands under it in order. */
record PlanSection(String heading, List<Block> blocks) {

  /** What a part is made of. */
  sealed interface Block permits Lines, Table, Drawing {}

  /** Sentences, one below the other. */
  record Lines(List<String> lines) implements Block {}

  /** Rows of cells; the first row is the head. */
  record Table(List<List<String>> rows) implements Block {}

  /** Lines that keep every space. */
  record Drawing(List<String> lines) implements Block {}
}
