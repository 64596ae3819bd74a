package hornbook.advice;

import hornbook.assessment.word.Word;
import hornbook.rulebook.fact.Urgency;

/** How much an answer could matter, the most first: a call for the vet outweighs any preference. */
public enum QuestionValue {
  /** The vet could be needed now. */
  NOW,
  TODAY,
  DAYS,
  MENTION,
  /** Another technique could come first. */
  FIRST_CHOICE,
  /** The verdict on a technique could change, and none that could come first. */
  VERDICT,
  /** The verdict on a support could change. */
  SUPPORT,
  /** A caution could be given, or something named that has to be put right first. */
  CAUTION,
  /** A reason more could be told; whatever it is, nothing else changes. */
  MEASURE;

  /** The word of the formats: kebab-case. */
  public String word() {
    return Word.kebab(name());
  }

  /** Whether what is advised could change. */
  public boolean changesAdvice() {
    return this != MEASURE;
  }

  public static QuestionValue of(Urgency urgency) {
    return switch (urgency) {
      case NOW -> NOW;
      case TODAY -> TODAY;
      case DAYS -> DAYS;
      case MENTION -> MENTION;
    };
  }
}
