package hornbook.rulebook.check;

import hornbook.rulebook.FootKind;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.fact.Limit;
import hornbook.rulebook.file.FaultCollector;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Limits whose names say which is the lesser and that are not: {@code x.least} above {@code
 * x.most}, and the like.
 */
final class OrderCheck {
  /** Last words of names, or of their last part, in the order their values have to be. */
  private static final List<List<String>> SERIES =
      List.of(
          List.of("least", "most"),
          List.of("from", "to"),
          List.of("slow", "mean", "fast"),
          List.of("toe-end", "side-end", "heel-start"));

  private final Rulebook book;
  private final FaultCollector faults;

  OrderCheck(Rulebook book, FaultCollector faults) {
    this.book = book;
    this.faults = faults;
  }

  void check() {
    for (Limit low : book.limits()) {
      Set<String> above = above(low.id());
      for (Limit high : above.isEmpty() ? List.<Limit>of() : book.limits()) {
        if (above.contains(high.id()) && together(low, high) && low.value() > high.value()) {
          faults.at(
              low,
              low.id(),
              "it is "
                  + shown(low.value())
                  + ", above "
                  + high.id()
                  + ", which is "
                  + shown(high.value()),
              "no number can lie between them: put them in order");
        }
      }
    }
  }

  /** The names that come above this one in a series. */
  private static Set<String> above(String low) {
    Set<String> names = new HashSet<>();
    for (List<String> series : SERIES) {
      for (int at = 0; at + 1 < series.size(); at++) {
        String stem = stem(low, series.get(at));
        if (stem != null) {
          series.subList(at + 1, series.size()).forEach(word -> names.add(stem + word));
        }
      }
    }
    return names;
  }

  /** What is left of a name when its last word is taken off; null where that is another word. */
  private static String stem(String id, String word) {
    boolean ends = id.endsWith("." + word) || id.endsWith("-" + word);
    return ends ? id.substring(0, id.length() - word.length()) : null;
  }

  private static boolean together(Limit one, Limit other) {
    return FootKind.ALL.stream().anyMatch(kind -> kind.holds(one) && kind.holds(other));
  }

  private static String shown(double value) {
    return value == Math.rint(value) ? String.valueOf((long) value) : String.valueOf(value);
  }
}
