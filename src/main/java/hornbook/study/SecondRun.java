package hornbook.study;

import hornbook.advice.Advisor;
import hornbook.advice.FootAdvice;
import hornbook.advice.Standing;
import hornbook.assessment.AssessmentReader;
import hornbook.assessment.ReadResult;
import hornbook.assessment.Setting;
import hornbook.assessment.Units;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Tells a contrast from a second run: from its settings up, through the checks of the file and the
 * engine.
 */
final class SecondRun {
  private final Advisor advisor;
  private final ReadResult.Good read;
  private final OnPaper paper;
  private final Units units;
  private final Standing noted;
  private final int foot;

  SecondRun(Advisor advisor, ReadResult.Good read, OnPaper paper, FootAdvice advice, Units units) {
    this.advisor = advisor;
    this.read = read;
    this.paper = paper;
    this.units = units;
    this.noted = Standing.of(advice);
    this.foot = advice.index();
  }

  /**
   * The contrast of some steps; empty where the file would not allow them together, and where the
   * run gives nothing wanted that fewer of them do not.
   */
  Optional<Contrast> contrast(List<Step> set, Goal goal) {
    List<Contrast.Change> changes = set.stream().map(this::change).toList();
    List<Setting> settings =
        changes.stream().flatMap(change -> change.settings().stream()).map(Setting::parse).toList();
    if (!(AssessmentReader.again(read, settings) instanceof ReadResult.Good again)) {
      return Optional.empty();
    }
    Standing standing = Standing.of(advisor.judge(again.assessment()).feet().get(foot));
    List<Turn> gives = Turn.between(noted, standing);
    List<Turn> fewer = fewer(set);
    return gives.stream().filter(goal::wants).anyMatch(turn -> turn.newBeside(fewer))
        ? Optional.of(new Contrast(changes, errors(set), gives, Care.between(noted, standing)))
        : Optional.empty();
  }

  /** How far off some steps are, together. */
  static double errors(List<Step> set) {
    return set.stream().mapToDouble(Step::errors).sum();
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
