package hornbook.study.contrast;

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
final class CombinedChanges {
  /** More sets of three than this are not tried while somebody waits. */
  private static final int MOST_THREES = 80_000;

  /** How finely sets are told apart by how far off they are, in measuring errors. */
  private static final double GRAIN = 0.25;

  private final WhatIf foot;
  private final ContrastGoal goal;
  private final List<SingleChange> steps;
  private final CombinedConditions pairs;
  private final BlockingRules barriers;

  /** How far off each step is, in measuring errors. */
  private final double[] off;

  /** The nearest way yet to each turn, in measuring errors. */
  private final Map<OutcomeChange, Double> nearest = new HashMap<>();

  /**
   * The nearest way yet to what is asked for; infinite where nothing is asked for in particular.
   */
  private double reached = Double.POSITIVE_INFINITY;

  CombinedChanges(WhatIf foot, List<SingleChange> all, ContrastGoal goal) {
    this.foot = foot;
    this.goal = goal;
    this.steps = different(all);
    this.barriers = new BlockingRules(foot, goal.subject());
    this.pairs = new CombinedConditions(foot, steps, barriers);
    this.off = steps.stream().mapToDouble(SingleChange::errors).toArray();
    all.forEach(step -> note(foot.turns(step.met()), step.errors()));
  }

  private static List<SingleChange> different(List<SingleChange> all) {
    List<SingleChange> sorted = new ArrayList<>(all);
    sorted.sort(Comparator.comparing(SingleChange::errors));
    List<SingleChange> different = new ArrayList<>();
    Set<BitSet> known = new HashSet<>();
    for (SingleChange step : sorted) {
      if (known.add(step.met()) || step.ofTheWall()) {
        different.add(step);
      }
    }
    return different;
  }

  private void note(List<OutcomeChange> turns, double errors) {
    turns.forEach(turn -> nearest.merge(turn, errors, Math::min));
    if (goal.subject() != null && turns.stream().anyMatch(goal::wants)) {
      reached = Math.min(reached, errors);
    }
  }

  /** Two steps, together nearer than so many errors. */
  List<List<SingleChange>> twos(double below) {
    double end = Math.min(below, reached);
    List<List<SingleChange>> found = new ArrayList<>();
    List<Runnable> notes = new ArrayList<>();
    for (int one = 0; one < off.length; one++) {
      for (int other = one + 1; other < off.length; other++) {
        double errors = off[one] + off[other];
        if (errors >= end) {
          break;
        }
        BitSet met = pairs.met(one, other);
        if (met != null && barriers.all(pairs.gone(one, other)) && near(met, errors)) {
          if (news(met, errors, turns(steps.get(one).met(), steps.get(other).met()))) {
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
    double end = Math.min(below, reached);
    double furthest = off.length == 0 ? 0 : 3 * off[off.length - 1] + GRAIN;
    int[] counts = new int[(int) (Math.min(end, furthest) / GRAIN) + 1];
    threes(end, (one, other, third, errors) -> counts[(int) (errors / GRAIN)]++);
    int count = 0;
    for (int at = 0; at < counts.length; at++) {
      count += counts[at];
      if (count > MOST_THREES) {
        return at * GRAIN;
      }
    }
    return below;
  }

  /** Three steps, together nearer than so many errors. */
  List<List<SingleChange>> threes(double below) {
    List<List<SingleChange>> found = new ArrayList<>();
    threes(
        Math.min(below, reached),
        (one, other, third, errors) -> {
          BitSet met = pairs.met(one, other, third);
          if (met != null && near(met, errors) && news(met, errors, fewer(one, other, third))) {
            found.add(List.of(steps.get(one), steps.get(other), steps.get(third)));
          }
        });
    return found;
  }

  /** Three steps by their numbers, and how far off they are together. */
  private interface Three {
    void take(int one, int other, int third, double errors);
  }

  /** Hands on every three that are nearer, and could leave no barrier. */
  private void threes(double below, Three to) {
    for (int one = 0; one < off.length; one++) {
      for (int other = one + 1; other < off.length && off[one] + off[other] < below; other++) {
        if (pairs.met(one, other) == null) {
          continue;
        }
        long gone = pairs.gone(one, other);
        for (int third = other + 1; third < off.length; third++) {
          double errors = off[one] + off[other] + off[third];
          if (errors >= below) {
            break;
          }
          if (barriers.all(gone | pairs.gone(one, third) | pairs.gone(other, third))) {
            to.take(one, other, third, errors);
          }
        }
      }
    }
  }

  private List<OutcomeChange> fewer(int one, int other, int third) {
    return turns(
        steps.get(one).met(),
        steps.get(other).met(),
        steps.get(third).met(),
        pairs.met(one, other),
        pairs.met(one, third),
        pairs.met(other, third));
  }

  private List<OutcomeChange> turns(BitSet... all) {
    List<OutcomeChange> turns = new ArrayList<>();
    for (BitSet met : all) {
      turns.addAll(foot.turns(met));
    }
    return turns;
  }

  /** Whether something wanted turns, and no fewer steps turn it that are as near. */
  private boolean near(BitSet met, double errors) {
    String subject = goal.subject();
    return (subject == null || foot.mayBeUsed(met, subject))
        && foot.turns(met).stream().anyMatch(turn -> near(turn, errors));
  }

  private boolean near(OutcomeChange turn, double errors) {
    return goal.wants(turn) && errors < nearest.getOrDefault(turn, Double.POSITIVE_INFINITY);
  }

  private boolean news(BitSet met, double errors, List<OutcomeChange> fewer) {
    return foot.turns(met).stream().anyMatch(turn -> near(turn, errors) && turn.newBeside(fewer));
  }
}
