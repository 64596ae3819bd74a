package hornbook.study;

import hornbook.advice.Advisor;
import hornbook.advice.FootAdvice;
import hornbook.advice.RuleTable;
import hornbook.assessment.ReadResult;
import hornbook.assessment.Units;
import hornbook.rulebook.RulebookLacks;
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
  public Contrasted of(ReadResult.Good read, int foot, String wanted, int most, IntConsumer done) {
    FootAdvice noted = advisor.advise(read.assessment()).feet().get(foot);
    Map<String, Limit> limits = noted.sheet().limits();
    OnPaper paper = new OnPaper(advisor, table, read.assessment(), noted);
    List<Looked> looked = LookedAt.of(read.assessment(), foot, limits);
    List<List<Step>> steps = new ArrayList<>();
    Steps finder = new Steps(paper, units);
    for (int at = 0; at < looked.size(); at++) {
      steps.add(finder.of(looked.get(at)));
      done.accept(80 * (at + 1) / looked.size());
    }
    Goal goal = Goal.of(noted, wanted);
    SecondRun run = new SecondRun(advisor, read, paper, noted, units);
    Search search = new Search(paper, run, most);
    List<Contrast> found = search.contrasts(steps, goal);
    Goal less = goal.less(noted);
    if (found.isEmpty() && !less.equals(goal)) {
      goal = less;
      found = search.contrasts(steps, goal);
    }
    done.accept(100);
    return new Contrasted(
        noted,
        goal,
        List.copyOf(found.subList(0, Math.min(most, found.size()))),
        found.size() > most,
        search.reach,
        looked,
        LookedAt.leftAlone(read.assessment()),
        RulebookLacks.limit(limits, "error.grade"),
        RulebookLacks.limit(limits, "error.word"));
  }

  /** The search on one foot. */
  private static final class Search {
    private final OnPaper paper;
    private final SecondRun run;
    private final int most;
    private double reach = Double.POSITIVE_INFINITY;

    Search(OnPaper paper, SecondRun run, int most) {
      this.paper = paper;
      this.run = run;
      this.most = most;
    }

    /** One more than is asked for, where there are more. */
    List<Contrast> contrasts(List<List<Step>> steps, Goal goal) {
      List<List<Step>> sets = new ArrayList<>();
      for (List<Step> one : steps) {
        ones(one, goal).forEach(step -> sets.add(List.of(step)));
      }
      List<Step> all = steps.stream().flatMap(List::stream).toList();
      if (goal.kind() != Goal.Kind.REACHED) {
        Together together = new Together(paper, all, goal);
        sets.addAll(together.twos(worstOf(sets)));
        double below = worstOf(sets);
        double near = together.reach(below);
        reach = near < below ? Math.min(reach, near) : reach;
        sets.addAll(together.threes(near));
      }
      sets.sort(Comparator.comparing(SecondRun::errors).thenComparing(List::size));
      List<Contrast> contrasts = new ArrayList<>();
      for (List<Step> set : sets) {
        if (contrasts.size() <= most) {
          run.contrast(set, goal)
              .filter(one -> contrasts.stream().noneMatch(one::tellsNoMoreThan))
              .ifPresent(contrasts::add);
        }
      }
      return contrasts;
    }

    /** The steps that bring something about that nearer ones of the same thing do not. */
    private List<Step> ones(List<Step> steps, Goal goal) {
      List<Step> ones = new ArrayList<>();
      Set<Turn> up = new HashSet<>();
      Set<Turn> down = new HashSet<>();
      for (Step step : steps) {
        List<Turn> turns = paper.turns(step.met()).stream().filter(goal::wants).toList();
        if ((step.up() ? up : down).addAll(turns)) {
          ones.add(step);
        }
      }
      return ones;
    }

    /** How far off the last is that will be told, of those there are. */
    private double worstOf(List<List<Step>> sets) {
      return sets.stream()
          .map(SecondRun::errors)
          .sorted()
          .skip(most)
          .findFirst()
          .orElse(Double.POSITIVE_INFINITY);
    }
  }
}
