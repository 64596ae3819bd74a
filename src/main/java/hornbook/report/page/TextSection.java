package hornbook.report.page;

import hornbook.report.page.Section.Item;
import hornbook.report.page.Section.Kind;
import hornbook.report.words.Sentence;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * One section as lines of text that can be made shorter: items give way from the end, those that
 * must not be lost shrink to their title.
 */
public final class TextSection {
  /** Sections that follow the one before without a blank line. */
  private static final Set<Kind> CLOSE_UP =
      EnumSet.of(
          Kind.REFERRAL,
          Kind.REFERRAL_LATER,
          Kind.PROVISIONAL,
          Kind.AFTER_VET,
          Kind.WORKABLE,
          Kind.WITH_VET,
          Kind.RULED_OUT,
          Kind.NOT_INDICATED,
          Kind.FOUND,
          Kind.SUPPORT,
          Kind.CAUTIONS,
          Kind.MEASURES,
          Kind.NEXT);

  /** Sections of which nothing need be left: the end of the page says how much there is. */
  private static final Set<Kind> COUNTED_BELOW =
      EnumSet.of(Kind.CHOICE, Kind.AFTER_VET, Kind.CAUTIONS, Kind.MEASURES, Kind.NEXT);

  /** Sections whose items are still named where there is no room for a sentence. */
  private static final Set<Kind> NAMED =
      EnumSet.of(Kind.FOUND, Kind.SUPPORT, Kind.WORKABLE, Kind.WITH_VET, Kind.RULED_OUT);

  private final Section section;
  private final int width;
  private final boolean first;
  private final List<List<String>> items;
  private final int[] heights;
  private int whole;
  private boolean closeUp;

  public TextSection(Section section, int width, boolean first) {
    this.section = section;
    this.width = width;
    this.first = first;
    this.whole = section.items().size();
    this.heights = new int[whole + 1];
    this.items = section.items().stream().map(this::wrapped).toList();
  }

  Kind kind() {
    return section.kind();
  }

  /** How many items never give way. */
  int kept() {
    return section.kept();
  }

  /** Whether fewer lines would be left if items gave way, down to so many whole ones. */
  boolean shrinks(int least) {
    return shorter() >= least;
  }

  /** Lets as few items give way as make the section shorter. */
  void shrink() {
    whole = shorter();
  }

  /** Lets the section follow the one before without a blank line. */
  void closeUp() {
    closeUp = true;
    Arrays.fill(heights, 0);
  }

  /** Whether some item has given way. */
  boolean grows() {
    return whole < section.items().size();
  }

  /** Makes the next item whole again. */
  void grow() {
    whole++;
  }

  void shrinkByOne() {
    whole--;
  }

  /** The most whole items with which the section is shorter than it is now, or -1. */
  private int shorter() {
    int now = whole;
    int height = height();
    do {
      whole--;
    } while (whole >= 0 && height() >= height);
    int shorter = whole;
    whole = now;
    return shorter;
  }

  /** Lines the section takes, with the blank one before it. */
  int height() {
    if (heights[whole] == 0) {
      heights[whole] = lines(TerminalStyle.NONE).size();
    }
    return heights[whole];
  }

  public List<String> lines(TerminalStyle paint) {
    List<String> lines = new ArrayList<>();
    boolean oneLine = section.kind() == Kind.SOURCES && section.inOne();
    if (!first && !oneLine && !closeUp && !CLOSE_UP.contains(section.kind())) {
      lines.add("");
    }
    if (whole == 0 && COUNTED_BELOW.contains(section.kind())) {
      return List.of();
    }
    if (whole == 0 && !named()) {
      headed(" " + section.items().size() + " more with --full", paint, lines);
    } else if (whole == 0 && named() && section.kind() != Kind.REFERRAL) {
      headed(" " + names(section.items()), paint, lines);
    } else if (section.inOne() && whole == 1) {
      headed(" " + section.items().get(0).line(), paint, lines);
    } else {
      headed("", paint, lines);
      items(lines);
    }
    return lines;
  }

  /** The heading, with a text that runs on behind it. */
  private void headed(String runOn, TerminalStyle paint, List<String> lines) {
    String heading = section.heading() + (runOn.isEmpty() ? "" : ":");
    List<String> wrapped = LineWrap.lines(heading + runOn, width, "", "  ");
    boolean alone = runOn.isEmpty();
    for (int i = 0; i < wrapped.size(); i++) {
      String line = wrapped.get(i);
      if (alone) {
        lines.add(paint.heading(section.kind(), line));
      } else if (i == 0 && line.startsWith(heading)) {
        lines.add(paint.heading(section.kind(), heading) + line.substring(heading.length()));
      } else {
        lines.add(line);
      }
    }
  }

  private void items(List<String> lines) {
    items.subList(0, whole).forEach(lines::addAll);
    lines.addAll(given());
  }

  private List<String> wrapped(Item item) {
    List<String> lines =
        new ArrayList<>(LineWrap.lines(Sentence.capital(item.line()), width, "- ", "  "));
    for (String note : item.notes()) {
      lines.addAll(LineWrap.lines(note, width, "  ", "  "));
    }
    return lines;
  }

  /** What stands in place of the items that gave way. */
  private List<String> given() {
    List<Item> gone = section.items().subList(whole, section.items().size());
    if (gone.isEmpty()) {
      return List.of();
    }
    if (section.kind() == Kind.REFERRAL) {
      return gone.stream().flatMap(item -> wrapped(item.calling()).stream()).toList();
    }
    if (COUNTED_BELOW.contains(section.kind())) {
      return List.of();
    }
    if (!named()) {
      return List.of("  and " + gone.size() + " more: --full");
    }
    return LineWrap.lines(names(gone), width, "- ", "  ");
  }

  private static String names(List<Item> gone) {
    String titles =
        gone.stream().map(item -> item.brief().line()).collect(Collectors.joining("; "));
    return Sentence.capital(titles) + ".";
  }

  /** Whether what gives way is still named. */
  private boolean named() {
    return refers() || NAMED.contains(section.kind());
  }

  private boolean refers() {
    return section.kind() == Kind.REFERRAL || section.kind() == Kind.REFERRAL_LATER;
  }
}
