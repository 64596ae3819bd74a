package hornbook.study;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Finds what two or three steps bring about together, nearer than fewer of them do. Of steps that
 * meet the same conditions the nearest stands for all.
 */
final class Together {
  /** More sets of three than this are not tried while somebody waits. */
  private static final long MOST_THREES = 100_000;

  /** How finely sets are told apart by how far off they are, in measuring errors. */
  private static final double GRAIN = 0.25;

  private final OnPaper foot;
  private final Goal goal;
  private final List<Step> steps;
  private final Pairs pairs;
  private final Barriers barriers;

  /** The nearest way yet to each turn, in measuring errors. */
  private final Map<Turn, Double> nearest = new HashMap<>();

  Together(OnPaper foot, List<Step> all, Goal goal) {
    this.foot = foot;
    this.goal = goal;
    this.steps = different(all);
    this.barriers = new Barriers(foot, goal.subject());
    this.pairs = new Pairs(foot, steps, barriers);
    all.forEach(step -> note(foot.turns(step.met()), step.errors()));
  }

  private static List<Step> different(List<Step> all) {
    List<Step> sorted = new ArrayList<>(all);
    sorted.sort(Comparator.comparing(Step::errors));
    List<Step> different = new ArrayList<>();
    Set<BitSet> known = new HashSet<>();
    for (Step step : sorted) {
      if (known.add(step.met()) || step.ofTheWall()) {
        different.add(step);
      }
    }
    return different;
  }

  private void note(List<Turn> turns, double errors) {
    turns.forEach(turn -> nearest.merge(turn, errors, Math::min));
  }

  /** Two steps, together nearer than so many errors. */
  List<List<Step>> twos(double below) {
    List<List<Step>> found = new ArrayList<>();
    List<Runnable> notes = new ArrayList<>();
    for (int one = 0; one < steps.size(); one++) {
      for (int other = one + 1; other < steps.size(); other++) {
        double errors = errors(one, other);
        if (errors >= below) {
          break;
        }
        BitSet met = pairs.met(one, other);
        if (met != null && barriers.all(pairs.gone(one, other))) {
          List<Turn> fewer = turns(steps.get(one).met(), steps.get(other).met());
          if (news(met, errors, fewer)) {
            found.add(List.of(steps.get(one), steps.get(other)));
            notes.add(() -> note(foot.turns(met), errors));
          }
        }
      }
    }
    notes.forEach(Runnable::run);
    return found;
  }

  /**
   * How far three steps together may be off without there being more sets of three than can be
   * tried.
   *
   * @param below what they have to be nearer than anyway
   */
  double reach(double below) {
    double furthest = steps.isEmpty() ? 0 : 3 * steps.get(steps.size() - 1).errors() + GRAIN;
    double high = Math.min(below, furthest);
    if (barriers.any() || threesBelow(high) <= MOST_THREES) {
      return below;
    }
    double low = 0;
    while (high - low > GRAIN) {
      double middle = (low + high) / 2;
      if (threesBelow(middle) <= MOST_THREES) {
        low = middle;
      } else {
        high = middle;
      }
    }
    return Math.floor(low / GRAIN) * GRAIN;
  }

  private long threesBelow(double below) {
    long count = 0;
    for (int one = 0; one < steps.size(); one++) {
      int end = steps.size();
      for (int other = one + 1; other < end; other++) {
        double left = below - errors(one, other);
        while (end > other + 1 && steps.get(end - 1).errors() >= left) {
          end--;
        }
        count += end - other - 1;
      }
    }
    return count;
  }

  /** Three steps, together nearer than so many errors. */
  List<List<Step>> threes(double below) {
    List<List<Step>> found = new ArrayList<>();
    for (int one = 0; one < steps.size(); one++) {
      for (int other = one + 1; other < steps.size() && errors(one, other) < below; other++) {
        if (pairs.met(one, other) != null) {
          threes(one, other, below, found);
        }
      }
    }
    return found;
  }

  private void threes(int one, int other, double below, List<List<Step>> to) {
    long gone = pairs.gone(one, other);
    for (int third = other + 1; third < steps.size(); third++) {
      double errors = errors(one, other) + steps.get(third).errors();
      if (errors >= below) {
        return;
      }
      if (barriers.all(gone | pairs.gone(one, third) | pairs.gone(other, third))) {
        BitSet met = pairs.met(one, other, third);
        if (met != null && near(met, errors) && news(met, errors, fewer(one, other, third))) {
          to.add(List.of(steps.get(one), steps.get(other), steps.get(third)));
        }
      }
    }
  }

  private List<Turn> fewer(int one, int other, int third) {
    return turns(
        steps.get(one).met(),
        steps.get(other).met(),
        steps.get(third).met(),
        pairs.met(one, other),
        pairs.met(one, third),
        pairs.met(other, third));
  }

  private List<Turn> turns(BitSet... all) {
    List<Turn> turns = new ArrayList<>();
    for (BitSet met : all) {
      turns.addAll(foot.turns(met));
    }
    return turns;
  }

  /** Whether something wanted turns, and no fewer steps turn it that are as near. */
  private boolean near(BitSet met, double errors) {
    String subject = goal.subject();
    return (subject == null || foot.spokenFor(met, subject))
        && foot.turns(met).stream().anyMatch(turn -> near(turn, errors));
  }

  private boolean near(Turn turn, double errors) {
    return goal.wants(turn) && errors < nearest.getOrDefault(turn, Double.POSITIVE_INFINITY);
  }

  private boolean news(BitSet met, double errors, List<Turn> fewer) {
    return foot.turns(met).stream().anyMatch(turn -> near(turn, errors) && turn.newBeside(fewer));
  }

  private double errors(int one, int other) {
    return steps.get(one).errors() + steps.get(other).errors();
  }
}
