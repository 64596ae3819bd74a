package hornbook.study;

import hornbook.advice.Advisor;
import hornbook.advice.FootAdvice;
import hornbook.advice.RuleTable;
import hornbook.advice.Standing;
import hornbook.assessment.AssessmentReader;
import hornbook.assessment.ReadResult;
import hornbook.assessment.Setting;
import hornbook.assessment.Units;
import hornbook.rulebook.RulebookLacks;
import hornbook.rulebook.fact.Limit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntConsumer;
import java.util.stream.Stream;

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
    Search search = new Search(read, paper, noted, most);
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

  private final class Search {
    private final ReadResult.Good read;
    private final OnPaper paper;
    private final Standing noted;
    private final int foot;
    private final int most;
    private double reach = Double.POSITIVE_INFINITY;

    Search(ReadResult.Good read, OnPaper paper, FootAdvice advice, int most) {
      this.read = read;
      this.paper = paper;
      this.noted = Standing.of(advice);
      this.foot = advice.index();
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
        double near = together.reach(worstOf(sets));
        reach = Math.min(reach, near);
        sets.addAll(together.threes(near));
      }
      sets.sort(Comparator.comparing(Search::errors).thenComparing(List::size));
      List<Contrast> contrasts = new ArrayList<>();
      for (List<Step> set : sets) {
        if (contrasts.size() <= most) {
          verified(set, goal)
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
          .map(Search::errors)
          .sorted()
          .skip(most)
          .findFirst()
          .orElse(Double.POSITIVE_INFINITY);
    }

    private static double errors(List<Step> set) {
      return set.stream().mapToDouble(Step::errors).sum();
    }

    /** The contrast, told from a second run from the settings up; empty if that does not agree. */
    private Optional<Contrast> verified(List<Step> set, Goal goal) {
      List<Contrast.Change> changes = set.stream().map(this::change).toList();
      List<Setting> settings =
          changes.stream()
              .flatMap(change -> change.settings().stream())
              .map(Setting::parse)
              .toList();
      if (!(AssessmentReader.again(read, settings) instanceof ReadResult.Good again)) {
        return Optional.empty();
      }
      Standing standing = Standing.of(advisor.judge(again.assessment()).feet().get(foot));
      List<Turn> gives = Turn.between(noted, standing);
      Stream<Turn> news = gives.stream().filter(goal::wants);
      List<Turn> fewer = fewer(set);
      if (news.noneMatch(turn -> turn.newBeside(fewer))) {
        return Optional.empty();
      }
      return Optional.of(new Contrast(changes, errors(set), gives, Care.between(noted, standing)));
    }

    /** All that turns with some of the steps and not all of them. */
    private List<Turn> fewer(List<Step> set) {
      List<Turn> turns = new ArrayList<>();
      for (int some = 1; some < (1 << set.size()) - 1; some++) {
        List<Step> part = new ArrayList<>();
        for (int at = 0; at < set.size(); at++) {
          if ((some & 1 << at) != 0) {
            part.add(set.get(at));
          }
        }
        turns.addAll(paper.turns(paper.met(part)));
      }
      return turns;
    }

    private Contrast.Change change(Step step) {
      Looked what = step.what();
      return new Contrast.Change(
          what,
          step.value(),
          what.written(what.noted(), units),
          what.written(step.value(), units),
          step.errors());
    }
  }
}
