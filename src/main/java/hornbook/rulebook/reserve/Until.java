package hornbook.rulebook.reserve;

import hornbook.assessment.word.Word;

/** Who or what gives back what is held back; what is waited for longest stands last. */
public enum Until {
  DAYS,
  VET_HAS_SEEN,
  VET_DIRECTS;

  /** The word for it in files. */
  public String word() {
    return Word.kebab(name());
  }

  /**
   * What has to happen first: {@code the vet has looked}.
   *
   * @param days how many, for {@code DAYS}
   */
  public String event(Integer days) {
    return switch (this) {
      case DAYS -> days + " quiet days have passed";
      case VET_HAS_SEEN -> "the vet has looked";
      case VET_DIRECTS -> "the vet directs the work";
    };
  }

  /** The one that is waited for longer. */
  Until or(Until other) {
    return compareTo(other) >= 0 ? this : other;
  }
}
