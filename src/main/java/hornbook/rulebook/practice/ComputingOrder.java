package hornbook.rulebook.practice;

import hornbook.rulebook.fact.Limit;
import java.util.ArrayList;
import java.util.List;

/** The order the limits that the computing of a foot takes have to stand in. */
final class ComputingOrder {
  /** Each of a row is at most the next. */
  private static final List<List<String>> RISING =
      List.of(
          List.of("growth.slow", "growth.mean", "growth.fast"),
          List.of(
              "toe.light-from",
              "toe.light-to",
              "toe.medium-from",
              "toe.medium-to",
              "toe.heavy-from",
              "toe.heavy-to"));

  /** Places along the wall, in per cent of it: each lies before the next. */
  private static final List<String> ALONG =
      List.of("wall.toe-end", "wall.side-end", "wall.heel-start");

  /** Shares of a length that are more than none of it and less than all. */
  private static final List<String> SHARES =
      List.of("outline.fore-widest", "outline.hind-widest", "outline.heel-width", "wall.toe-end");

  /** A limit that stands out of order, and what it has to be. */
  record Breach(Limit limit, String has) {}

  private ComputingOrder() {}

  static List<Breach> breaches(List<Limit> limits) {
    List<Breach> breaches = new ArrayList<>();
    for (Limit limit : limits) {
      if (SHARES.contains(limit.id()) && !(limit.value() > 0 && limit.value() < 100)) {
        breaches.add(new Breach(limit, "has to be above 0 % and below 100 %"));
      }
      for (List<String> row : RISING) {
        below(limit, row, limits, false, breaches);
      }
      below(limit, ALONG, limits, true, breaches);
    }
    return breaches;
  }

  private static void below(
      Limit limit, List<String> row, List<Limit> limits, boolean strictly, List<Breach> breaches) {
    int at = row.indexOf(limit.id());
    if (at < 0 || at + 1 == row.size()) {
      return;
    }
    for (Limit next : limits) {
      boolean meets = next.id().equals(row.get(at + 1)) && together(limit, next);
      boolean out = strictly ? limit.value() >= next.value() : limit.value() > next.value();
      if (meets && out) {
        String side = strictly ? "below " : "at most ";
        breaches.add(new Breach(limit, "has to be " + side + next.id() + ", " + shown(next)));
        breaches.add(new Breach(next, "has to be above " + limit.id() + ", " + shown(limit)));
      }
    }
  }

  private static boolean together(Limit one, Limit other) {
    boolean limbs = one.limbs() == null || other.limbs() == null || one.limbs() == other.limbs();
    boolean age = one.age() == null || other.age() == null || one.age() == other.age();
    return limbs && age;
  }

  private static String shown(Limit limit) {
    return LimitAmount.shown(limit.value()) + " " + limit.unit();
  }
}
