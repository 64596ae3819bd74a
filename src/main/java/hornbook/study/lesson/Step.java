package hornbook.study.lesson;

import hornbook.study.critique.About;
import hornbook.study.critique.FootKey;
import java.util.List;

/**
 * What is asked next.
 *
 * @param foot the foot it is asked of; null while looking
 * @param words the words that may be answered; empty where any field may be named
 */
public record Step(Kind kind, FootKey foot, List<String> words) {
  /** The parts of a lesson, in the order they are asked. */
  public enum Kind {
    LOOK(null, false),
    VET(About.VET, false),
    VET_FOR(About.VET, true),
    FINDINGS(About.FINDING, true),
    TECHNIQUE(About.TECHNIQUE, false),
    BECAUSE(About.REASON, true),
    RULED_OUT(About.RULED_OUT, true),
    SUPPORTS(About.SUPPORT, true),
    CAUTIONS(About.CAUTION, true),
    ASK(About.QUESTION, true),
    NEXT_VISIT(About.NEXT_VISIT, false),
    DEPARTS(null, false);

    private final About about;
    private final boolean list;

    Kind(About about, boolean list) {
      this.about = about;
      this.list = list;
    }

    /** What it is about in a critique; null for looking, and for another way than the advice. */
    public About about() {
      return about;
    }

    /** Whether several words may be answered. */
    public boolean list() {
      return list;
    }
  }
}
