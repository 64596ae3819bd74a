package hornbook.report.words;

import hornbook.foot.number.Unknown;
import hornbook.rulebook.fact.Crack;
import hornbook.rulebook.fact.Stretch;
import java.util.Map;

/** The words of the formats as they are spoken. */
public final class PlainWords {
  /** Words that are more than their parts with a space between; the rest lose their hyphens. */
  private static final Map<String, String> SPOKEN =
      Map.ofEntries(
          Map.entry("base-wide", "base-wide"),
          Map.entry("base-narrow", "base-narrow"),
          Map.entry("toe-out", "toe-out"),
          Map.entry("toe-in", "toe-in"),
          Map.entry("corn-seat", "seat of corn"),
          Map.entry("bleeding-growth", "a growth that bleeds"),
          Map.entry("above-fetlock", "to above the fetlock"),
          Map.entry("level-dry", "level and dry"),
          Map.entry("medial", "inner"),
          Map.entry("lateral", "outer"));

  private PlainWords() {}

  public static String of(String word) {
    return SPOKEN.getOrDefault(word, word.replace('-', ' '));
  }

  /** {@code quarter crack on the outer side}. */
  public static String of(Crack crack) {
    String what = crack.place() == null ? "crack" : crack.place() + " crack";
    return crack.side() == null ? what : what + " on the " + of(crack.side()) + " side";
  }

  /** {@code separated inner wall from 0 to 40 mm}; lengths in the units given. */
  public static String of(Stretch stretch, Amounts amounts) {
    String state = stretch.state() == null ? "" : spokenState(stretch.state()) + " ";
    String side = stretch.side() == null ? "" : of(stretch.side()) + " ";
    String what = state + side + "wall";
    return Unknown.is(stretch.from()) || Unknown.is(stretch.to())
        ? what
        : what + " from " + amounts.span(stretch.from(), stretch.to(), "mm");
  }

  private static String spokenState(String state) {
    return state.equals("broken-away") ? state : of(state);
  }
}
