package hornbook.cli.classroom;

import hornbook.advice.engine.Advisor;
import hornbook.assessment.quantity.Units;
import hornbook.assessment.read.ReadResult;
import hornbook.report.classroom.CritiquePage;
import hornbook.study.contrast.Contrast;
import hornbook.study.contrast.Contrasts;
import hornbook.study.critique.FootCritique;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** Looks up what would make a technique the first choice, each once. */
final class FirstChoiceFinder implements CritiquePage.FirstChoiceIf {
  private final ReadResult.Good read;
  private final Contrasts contrasts;
  private final Map<String, Optional<Contrast>> known = new HashMap<>();

  FirstChoiceFinder(ReadResult.Good read, Advisor advisor, Units units) {
    this.read = read;
    this.contrasts = new Contrasts(advisor, units);
  }

  @Override
  public Optional<Contrast> of(FootCritique foot, String technique) {
    int at = foot.key().foot().index();
    return known.computeIfAbsent(
        at + " " + technique,
        key -> contrasts.of(read, at, technique, 1, done -> {}).contrasts().stream().findFirst());
  }
}
