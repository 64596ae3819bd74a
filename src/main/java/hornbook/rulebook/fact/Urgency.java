package hornbook.rulebook.fact;

import hornbook.assessment.word.Word;

/** How soon the vet has to see the horse, most urgent first. */
public enum Urgency {
  NOW,
  TODAY,
  DAYS,
  MENTION;

  public String word() {
    return Word.kebab(name());
  }
}
