package hornbook.report.advice;

import hornbook.report.words.Phrases;
import hornbook.rulebook.Condition;
import hornbook.rulebook.RuleConclusion;
import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.fact.Limit;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** The limits that readings are compared with, with the name of what lies beyond each. */
final class LimitBands {
  private final Map<String, List<Held>> named = new LinkedHashMap<>();
  private final Map<String, List<Held>> others = new LinkedHashMap<>();

  /**
   * A limit a reading is compared with.
   *
   * @param beyond whether it is the far side of the limit that bears the name
   * @param finding the finding that lies there, or null
   */
  private record Held(String limit, boolean beyond, String finding) {
    /** As equals, which a cold start would have to make first. */
    boolean same(Held other) {
      return limit.equals(other.limit)
          && beyond == other.beyond
          && Objects.equals(finding, other.finding);
    }
  }

  /**
   * A band beside a reading.
   *
   * @param name the finding's label or the limit's
   * @param bound where it begins: {@code from 5°}; for a limit without a name its value
   */
  record Band(String name, String finding, String bound, Limit limit) {}

  LimitBands(Rulebook book) {
    for (RuleEntry rule : book.rules().values()) {
      for (Condition condition : rule.conditions()) {
        if (condition instanceof Condition.OfReading reading) {
          String limit = rule.limitBoundTo(reading.limit());
          String finding =
              rule.outcome() instanceof RuleConclusion.Finds finds ? finds.finding() : null;
          Held held = new Held(limit, !reading.satisfies(), finding);
          List<Held> to =
              (finding == null ? others : named)
                  .computeIfAbsent(reading.what(), what -> new ArrayList<>());
          if (to.stream().noneMatch(held::same)) {
            to.add(held);
          }
        }
      }
    }
  }

  /** The bands beside a reading: those that have a name in the trade, else the limits alone. */
  List<Band> of(String what, Map<String, Limit> limits, Rulebook book, Phrases phrases) {
    List<Band> bands = new ArrayList<>();
    for (Held held : named.getOrDefault(what, others.getOrDefault(what, List.of()))) {
      Limit limit = limits.get(held.limit());
      if (limit != null && bands.stream().noneMatch(band -> band.limit() == limit)) {
        String name =
            held.finding() == null ? limit.label() : book.findings().get(held.finding()).label();
        bands.add(new Band(name, held.finding(), bound(held, limit, phrases), limit));
      }
    }
    return bands;
  }

  private static String bound(Held held, Limit limit, Phrases phrases) {
    String value = phrases.groundedLimit(limit);
    if (held.finding() == null) {
      return value;
    }
    boolean above = (limit.direction() == Limit.Direction.AT_LEAST) != held.beyond();
    boolean itself = limit.inclusive() != held.beyond();
    if (above) {
      return (itself ? "from " : "over ") + value;
    }
    return itself ? "to " + value : "under " + value;
  }
}
