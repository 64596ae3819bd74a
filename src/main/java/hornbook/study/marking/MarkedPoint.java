package hornbook.study.marking;

import hornbook.assessment.word.Word;
import hornbook.study.critique.About;
import hornbook.study.critique.FootCritique;
import hornbook.study.critique.Point;
import hornbook.study.exercise.FootAnswer;
import java.util.List;

/** What marks are given for on a foot. */
public enum MarkedPoint {
  VET(About.VET),
  REFERRALS(About.VET),
  TECHNIQUE(About.TECHNIQUE),
  REASONS(About.REASON),
  RULED_OUT(About.RULED_OUT),
  FINDINGS(About.FINDING),
  SUPPORTS(About.SUPPORT),
  CAUTIONS(About.CAUTION),
  QUESTIONS(About.QUESTION);

  private final About about;

  MarkedPoint(About about) {
    this.about = about;
  }

  About about() {
    return about;
  }

  public String word() {
    return Word.kebab(name());
  }

  /** Whether it is one word, and not a list. */
  public boolean single() {
    return this == VET || this == TECHNIQUE;
  }

  /** The points of a critique it is made of; how soon is the one that says what is wanted. */
  List<Point> of(FootCritique foot) {
    return foot.about(about).stream()
        .filter(point -> about != About.VET || (point.wanted() != null) == (this == VET))
        .toList();
  }

  /** Whether the learner said anything to it. */
  boolean answered(FootAnswer answer) {
    return switch (this) {
      case VET -> answer.vet() != null;
      case REFERRALS -> answer.vetFor() != null;
      case TECHNIQUE -> answer.technique() != null;
      case REASONS -> answer.because() != null;
      case RULED_OUT -> answer.ruledOut() != null;
      case FINDINGS -> answer.findings() != null;
      case SUPPORTS -> answer.supports() != null;
      case CAUTIONS -> answer.cautions() != null;
      case QUESTIONS -> answer.ask() != null;
    };
  }
}
