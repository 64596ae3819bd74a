package hornbook.report.record;

import hornbook.record.EntryLine;
import hornbook.record.store.Verified;
import hornbook.report.page.LineWrap;
import hornbook.report.page.PageWidth;
import hornbook.report.words.Numbers;
import hornbook.report.words.Sentence;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** The list of entries, and what came of checking a book, as plain text. */
public final class BookText {
  private static final int NAME = 18;

  private BookText() {}

  /** A line an entry, in the order they were written. */
  public static String list(List<EntryLine> entries) {
    Set<Integer> corrected = entries.stream().map(EntryLine::corrects).collect(Collectors.toSet());
    StringBuilder text = new StringBuilder(" entry  visit       horse\n");
    for (EntryLine entry : entries) {
      String number = Integer.toString(entry.number());
      String day = entry.visited() == null ? "no day" : entry.visited().toString();
      String horse = entry.horse() == null ? "no name" : entry.horse();
      String start =
          " ".repeat(Math.max(0, 6 - number.length()))
              + number
              + "  "
              + padded(day, 10)
              + "  "
              + padded(horse, NAME)
              + "  ";
      String told = told(entry, corrected);
      if (start.length() + told.length() <= PageWidth.columns()) {
        text.append(start).append(told).append('\n');
      } else {
        LineWrap.lines(told, PageWidth.columns(), start, " ".repeat(start.length()))
            .forEach(line -> text.append(line).append('\n'));
      }
    }
    return text.toString();
  }

  private static String told(EntryLine entry, Set<Integer> corrected) {
    if (entry.digest() == null) {
      return "cannot be read: hornbook record verify";
    }
    StringBuilder told = new StringBuilder(entry.chose() == null ? "" : entry.chose());
    if (entry.departs()) {
      told.append("; departs from the advice");
    }
    if (entry.corrects() > 0) {
      told.append("; corrects ").append(entry.corrects());
    }
    if (corrected.contains(entry.number())) {
      told.append("; corrected later");
    }
    return told.toString();
  }

  /** Cut or filled to so many columns. */
  private static String padded(String text, int room) {
    int columns = text.codePointCount(0, text.length());
    if (columns <= room) {
      return text + " ".repeat(room - columns);
    }
    return text.substring(0, text.offsetByCodePoints(0, room - 1)) + "~";
  }

  /** Every fault, then every remark, then how the book stands. */
  public static String verified(Verified verified) {
    StringBuilder text = new StringBuilder();
    verified.faults().forEach(fault -> line(fault.says(), text));
    verified.remarks().forEach(remark -> line("Note: " + remark, text));
    String entries = verified.entries() == 1 ? "1 entry" : verified.entries() + " entries";
    text.append(
        verified.whole()
            ? entries + ", one whole chain: nothing altered, missing or out of order.\n"
            : entries + "; " + Numbers.counted(verified.faults().size(), "fault") + ".\n");
    return text.toString();
  }

  private static void line(String says, StringBuilder text) {
    String capital = Sentence.capital(says) + ".";
    LineWrap.lines(capital, PageWidth.columns(), "", "  ")
        .forEach(line -> text.append(line).append('\n'));
  }
}
