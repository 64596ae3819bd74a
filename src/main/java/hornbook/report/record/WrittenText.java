package hornbook.report.record;

import hornbook.record.Departure;
import hornbook.record.Entry;
import hornbook.record.store.Written;
import hornbook.report.page.LineWrap;
import hornbook.report.page.PageWidth;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

/** What is said when an entry has been written. */
public final class WrittenText {
  private WrittenText() {}

  public static String of(Written written, UnaryOperator<String> labels) {
    Entry entry = written.entry();
    List<String> lines = new ArrayList<>();
    lines.add("Entry " + entry.number() + " is written: " + EntryPage.title(entry) + ".");
    entry
        .chose()
        .forEach(
            (limb, technique) ->
                lines.add(AdviceTree.limb(limb) + ": " + labels.apply(technique) + "."));
    for (Departure one : entry.departures()) {
      lines.add(AdviceTree.limb(one.foot()) + " departs from the advice. " + one.says());
      one.forbidden().forEach(line -> lines.add("A call for the vet forbids this: " + line));
    }
    if (entry.departs()) {
      lines.add("Reason given: " + entry.because());
    }
    if (entry.corrects() != null) {
      lines.add("It corrects entry " + entry.corrects() + ", which stays as it is.");
    }
    StringBuilder text = new StringBuilder();
    for (String line : lines) {
      String indent = text.isEmpty() ? "" : "  ";
      LineWrap.lines(line, PageWidth.columns(), indent, "    ")
          .forEach(one -> text.append(one).append('\n'));
    }
    return text.append("  ").append(written.file()).append('\n').toString();
  }
}
