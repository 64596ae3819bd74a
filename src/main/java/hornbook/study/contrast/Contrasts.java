package hornbook.study.contrast;

import hornbook.advice.FootAdvice;
import hornbook.advice.engine.Advisor;
import hornbook.advice.outcome.RuleTable;
import hornbook.assessment.quantity.Units;
import hornbook.assessment.read.ReadResult;
import hornbook.rulebook.compile.MissingFromRulebook;
import hornbook.rulebook.fact.Limit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.IntConsumer;

/** Finds the smallest changes to what was measured or seen on a foot that change the advice. */
public final class Contrasts {
  public static final int USUAL = 8;
  public static final int MOST = 100;

  private final Advisor advisor;
  private final RuleTable table;
  private final Units units;

  /**
   * @param units those of the tools it is measured with: nothing is told between their marks
   */
  public Contrasts(Advisor advisor, Units units) {
    this.advisor = advisor;
    this.table = new RuleTable(advisor.book());
    this.units = units;
  }

  /**
   * The contrasts of the foot at a place in the assessment.
   *
   * @param wanted the technique or support to be brought about, or null
   * @param most how many are wanted at the most
   * @param done told how much of a hundred is done, now and then
   */
  public FootContrasts of(
      ReadResult.Good read, int foot, String wanted, int most, IntConsumer done) {
    FootAdvice noted = advisor.advise(read.assessment()).feet().get(foot);
    Map<String, Limit> limits = noted.sheet().limits();
    WhatIf paper = new WhatIf(advisor, table, read.assessment(), noted);
    List<Observation> looked = Observations.of(read.assessment(), foot, limits);
    List<List<SingleChange>> steps = new ArrayList<>();
    SingleChanges finder = new SingleChanges(paper, units);
    for (int at = 0; at < looked.size(); at++) {
      steps.add(finder.of(looked.get(at)));
      done.accept(80 * (at + 1) / looked.size());
    }
    ContrastGoal goal = ContrastGoal.of(noted, wanted);
    ContrastVerification run = new ContrastVerification(advisor, read, paper, noted, units);
    Search search = new Search(paper, run, most);
    List<Contrast> found = search.contrasts(steps, goal);
    ContrastGoal less = goal.less(noted);
    if (found.isEmpty() && !less.equals(goal)) {
      goal = less;
      found = search.contrasts(steps, goal);
    }
    done.accept(100);
    return new FootContrasts(
        noted,
        goal,
        List.copyOf(found.subList(0, Math.min(most, found.size()))),
        found.size() > most,
        search.reach,
        looked,
        Observations.leftAlone(read.assessment()),
        MissingFromRulebook.limit(limits, "error.grade"),
        MissingFromRulebook.limit(limits, "error.word"));
  }

  /** The search on one foot. */
  private static final class Search {
    private final WhatIf paper;
    private final ContrastVerification run;
    private final int most;
    private double reach = Double.POSITIVE_INFINITY;

    Search(WhatIf paper, ContrastVerification run, int most) {
      this.paper = paper;
      this.run = run;
      this.most = most;
    }

    /** One more than is asked for, where there are more. */
    List<Contrast> contrasts(List<List<SingleChange>> steps, ContrastGoal goal) {
      List<List<SingleChange>> sets = new ArrayList<>();
      for (List<SingleChange> one : steps) {
        ones(one, goal).forEach(step -> sets.add(List.of(step)));
      }
      List<SingleChange> all = steps.stream().flatMap(List::stream).toList();
      if (goal.kind() != ContrastGoal.Kind.REACHED) {
        CombinedChanges together = new CombinedChanges(paper, all, goal);
        sets.addAll(together.twos(worstOf(sets)));
        double below = worstOf(sets);
        double near = together.reach(below);
        reach = near < below ? Math.min(reach, near) : reach;
        sets.addAll(together.threes(near));
      }
      sets.sort(Comparator.comparing(ContrastVerification::errors).thenComparing(List::size));
      List<Contrast> contrasts = new ArrayList<>();
      for (List<SingleChange> set : sets) {
        if (contrasts.size() <= most) {
          run.contrast(set, goal)
              .filter(one -> contrasts.stream().noneMatch(one::tellsNoMoreThan))
              .ifPresent(contrasts::add);
        }
      }
      return contrasts;
    }

    /** The steps that bring something about that nearer ones of the same thing do not. */
    private List<SingleChange> ones(List<SingleChange> steps, ContrastGoal goal) {
      List<SingleChange> ones = new ArrayList<>();
      Set<OutcomeChange> up = new HashSet<>();
      Set<OutcomeChange> down = new HashSet<>();
      for (SingleChange step : steps) {
        List<OutcomeChange> turns = paper.turns(step.met()).stream().filter(goal::wants).toList();
        if ((step.up() ? up : down).addAll(turns)) {
          ones.add(step);
        }
      }
      return ones;
    }

    /** How far off the last is that will be told, of those there are. */
    private double worstOf(List<List<SingleChange>> sets) {
      return sets.stream()
          .map(ContrastVerification::errors)
          .sorted()
          .skip(most)
          .findFirst()
          .orElse(Double.POSITIVE_INFINITY);
    }
  }
}
