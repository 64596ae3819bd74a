package hornbook.study.coverage;

import hornbook.advice.condition.ConditionState;
import hornbook.rulebook.Condition;
import hornbook.rulebook.Subjects;
import hornbook.rulebook.fact.CitedFact;
import hornbook.rulebook.fact.Limit;
import hornbook.rulebook.fact.Reading;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * On how many feet some rule met a reading under a limit, at it, and over it. A side that no
 * reading can come to, such as under nothing, is not asked for.
 */
public record LimitCover(
    Limit limit, int under, int at, int over, boolean underAsked, boolean overAsked) {
  public boolean whole() {
    return holes().isEmpty();
  }

  /** What is lacking: {@code under}, {@code at}, {@code over}. */
  public List<String> holes() {
    List<String> holes = new ArrayList<>();
    if (under == 0 && underAsked) {
      holes.add("under");
    }
    if (at == 0) {
      holes.add("at");
    }
    if (over == 0 && overAsked) {
      holes.add("over");
    }
    return holes;
  }

  /** Adds up reading by reading. */
  static final class Tally {
    /** A reading so near a limit, as a share of the limit's step, counts as at it. */
    private static final double NEAR = 0.1;

    private final Limit limit;
    private final Set<String> heldAgainst = new TreeSet<>();
    private int under;
    private int at;
    private int over;

    Tally(Limit limit) {
      this.limit = limit;
    }

    /** Notes a reading that some rule holds against the limit. */
    void holds(String what) {
      heldAgainst.add(what);
    }

    void add(ConditionState condition) {
      for (CitedFact cited : condition.cited()) {
        if (cited instanceof Reading reading
            && condition.condition() instanceof Condition.OfReading held) {
          add(deciding(reading, held.satisfies()));
        }
      }
    }

    /** Of a number known only within bounds, the bound that decides whether the condition holds. */
    private double deciding(Reading reading, boolean satisfies) {
      boolean low = (limit.direction() == Limit.Direction.AT_LEAST) == satisfies;
      return low ? reading.low() : reading.high();
    }

    private void add(double value) {
      double beyond = value - limit.value();
      double near = limit.step() * NEAR;
      under += beyond < -near ? 1 : 0;
      at += Math.abs(beyond) <= near ? 1 : 0;
      over += beyond > near ? 1 : 0;
    }

    LimitCover cover() {
      boolean underAsked =
          heldAgainst.stream().anyMatch(what -> Subjects.canBeUnder(what, limit.value()));
      boolean overAsked =
          heldAgainst.stream().anyMatch(what -> Subjects.canBeOver(what, limit.value()));
      return new LimitCover(limit, under, at, over, underAsked, overAsked);
    }
  }
}
