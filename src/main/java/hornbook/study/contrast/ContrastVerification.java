package hornbook.study.contrast;

import hornbook.advice.FootAdvice;
import hornbook.advice.engine.Advisor;
import hornbook.advice.outcome.Outcome;
import hornbook.assessment.quantity.Units;
import hornbook.assessment.read.AssessmentReader;
import hornbook.assessment.read.ReadResult;
import hornbook.assessment.read.Setting;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Tells a contrast from a second run: from its settings up, through the checks of the file and the
 * engine.
 */
final class ContrastVerification {
  private final Advisor advisor;
  private final ReadResult.Good read;
  private final WhatIf paper;
  private final Units units;
  private final Outcome noted;
  private final int foot;

  ContrastVerification(
      Advisor advisor, ReadResult.Good read, WhatIf paper, FootAdvice advice, Units units) {
    this.advisor = advisor;
    this.read = read;
    this.paper = paper;
    this.units = units;
    this.noted = Outcome.of(advice);
    this.foot = advice.index();
  }

  /**
   * The contrast of some steps; empty where the file would not allow them together, and where the
   * run gives nothing wanted that fewer of them do not.
   */
  Optional<Contrast> contrast(List<SingleChange> set, ContrastGoal goal) {
    List<Contrast.Change> changes = set.stream().map(this::change).toList();
    List<Setting> settings =
        changes.stream().flatMap(change -> change.settings().stream()).map(Setting::parse).toList();
    if (!(AssessmentReader.again(read, settings) instanceof ReadResult.Good again)) {
      return Optional.empty();
    }
    Outcome standing = Outcome.of(advisor.judge(again.assessment()).feet().get(foot));
    List<OutcomeChange> gives = OutcomeChange.between(noted, standing);
    List<OutcomeChange> fewer = fewer(set);
    return gives.stream().filter(goal::wants).anyMatch(turn -> turn.newBeside(fewer))
        ? Optional.of(
            new Contrast(changes, errors(set), gives, CautionShift.between(noted, standing)))
        : Optional.empty();
  }

  /** How far off some steps are, together. */
  static double errors(List<SingleChange> set) {
    return set.stream().mapToDouble(SingleChange::errors).sum();
  }

  /** All that turns with some of the steps and not all of them. */
  private List<OutcomeChange> fewer(List<SingleChange> set) {
    List<OutcomeChange> turns = new ArrayList<>();
    for (int some = 1; some < (1 << set.size()) - 1; some++) {
      List<SingleChange> part = new ArrayList<>();
      for (int at = 0; at < set.size(); at++) {
        if ((some & 1 << at) != 0) {
          part.add(set.get(at));
        }
      }
      turns.addAll(paper.turns(paper.met(part)));
    }
    return turns;
  }

  private Contrast.Change change(SingleChange step) {
    Observation what = step.what();
    return new Contrast.Change(
        what,
        step.value(),
        what.written(what.noted(), units),
        what.written(step.value(), units),
        step.errors());
  }
}
