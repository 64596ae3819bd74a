package hornbook.report.page;

import hornbook.report.page.Section.Kind;
import java.util.List;

/**
 * Brings the sections of a page down to a number of lines, in stages of need: the longest of those
 * that may still give gives its last item, and says so. Calls for the vet now or today keep their
 * names and what to do meanwhile; what has to be done first and what speaks against the first
 * choice never give: rather than lose them, a page first goes without blank lines, then grows
 * longer.
 */
public final class TextFit {
  private static final int STAGES = 6;

  private TextFit() {}

  public static void within(int budget, List<TextSection> sections) {
    for (int stage = 0; stage < STAGES && height(sections) > budget; stage++) {
      while (height(sections) > budget && give(sections, stage)) {
        continue;
      }
    }
    if (height(sections) > budget) {
      sections.forEach(TextSection::closeUp);
    }
    boolean urgentCut = sections.stream().anyMatch(TextFit::urgentCut);
    sections.stream()
        .filter(section -> !(urgentCut && section.kind() == Kind.REFERRAL_LATER))
        .forEach(section -> growBack(section, budget, sections));
  }

  /** Whether the most urgent calls had to give: then no later one is told more fully. */
  private static boolean urgentCut(TextSection section) {
    return section.kind() == Kind.REFERRAL && section.grows();
  }

  /** Makes items whole again as long as there is room. */
  private static void growBack(TextSection section, int budget, List<TextSection> sections) {
    while (section.grows() && height(sections) <= budget) {
      section.grow();
      if (height(sections) > budget) {
        section.shrinkByOne();
        return;
      }
    }
  }

  /**
   * Lets the longest section that can grow shorter do so; false when none can. Of the calls for the
   * vet the less urgent give way to the more urgent.
   */
  private static boolean give(List<TextSection> sections, int stage) {
    TextSection longest = null;
    boolean called = false;
    for (TextSection section : sections) {
      boolean lesser = called && section.kind() == Kind.REFERRAL_LATER && stage > 0;
      called |= section.kind() == Kind.REFERRAL_LATER;
      int least = lesser ? 0 : least(section.kind(), stage);
      boolean gives = section.shrinks(Math.max(section.kept(), least));
      if (gives && (longest == null || section.height() >= longest.height())) {
        longest = section;
      }
    }
    if (longest == null) {
      return false;
    }
    longest.shrink();
    return true;
  }

  private static int height(List<TextSection> sections) {
    int sum = 0;
    for (TextSection section : sections) {
      sum += section.height();
    }
    return sum;
  }

  /** The fewest items that stay whole at each stage of need. */
  private static int least(Kind kind, int stage) {
    int all = Integer.MAX_VALUE;
    return switch (kind) {
      case FOUND -> List.of(5, 3, 2, 1, 0, 0).get(stage);
      case CAUTIONS -> List.of(3, 2, 1, 1, 0, 0).get(stage);
      case MEASURES -> List.of(3, 2, 2, 1, 0, 0).get(stage);
      case SUPPORT -> List.of(all, 4, 3, 1, 0, 0).get(stage);
      case NEXT -> List.of(all, 2, 1, 0, 0, 0).get(stage);
      case CHOICE -> List.of(2, 2, 1, 1, 1, 1).get(stage);
      case PRACTICE -> all;
      case REFERRAL -> List.of(all, all, all, 1, 0, 0).get(stage);
      case AFTER_VET -> List.of(all, all, all, all, 1, 1).get(stage);
      case REFERRAL_LATER -> List.of(all, 2, 1, 1, 1, 0).get(stage);
      case WORKABLE, WITH_VET, RULED_OUT, NOT_INDICATED -> List.of(all, all, 3, 1, 0, 0).get(stage);
      case PROVISIONAL, INCOMPLETE, SOURCES, REASONS -> all;
    };
  }
}
