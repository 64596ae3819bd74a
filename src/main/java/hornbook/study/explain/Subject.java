package hornbook.study.explain;

import hornbook.assessment.word.Word;

/** What an explanation is asked of, by the id the formats use. */
public record Subject(Kind kind, String id) {
  /** The kinds of things that can be explained; of two by one name the earlier is meant. */
  public enum Kind {
    RULE,
    TECHNIQUE,
    SUPPORT,
    REFERRAL,
    CAUTION,
    FINDING,
    MEASURE;

    /** The word that may stand before a name, separated from it by a colon. */
    public String word() {
      return Word.kebab(name());
    }
  }
}
