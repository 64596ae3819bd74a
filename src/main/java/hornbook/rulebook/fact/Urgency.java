package hornbook.rulebook.fact;

import java.util.Locale;

/** How soon the vet has to see the horse, most urgent first. */
public enum Urgency {
  NOW,
  TODAY,
  DAYS,
  MENTION;

  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
