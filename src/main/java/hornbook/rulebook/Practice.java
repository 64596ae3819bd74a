package hornbook.rulebook;

import java.time.LocalDate;
import java.util.List;

/**
 * What a yard, a college or a country holds to in place of, or beside, the rule base.
 *
 * @param by who answers for it
 * @param law the law there, in a sentence, or null
 */
public record Practice(
    String name,
    String by,
    LocalDate date,
    List<LimitChange> changes,
    List<Note> notes,
    String law,
    List<EmergencyNumber> emergency) {

  /** The format of its file. */
  public static final String FORMAT = "hornbook-practice/1";

  /** The key of the source that a changed limit rests on. */
  public static final String SOURCE = "local-practice";

  /** What a note is about. */
  public enum About {
    TOPIC,
    RULE,
    TECHNIQUE
  }

  /** Something added to a topic, a rule or a technique. */
  public record Note(About about, String id, String says) {}

  /** Whom to call. */
  public record EmergencyNumber(String name, String number) {}

  public Practice {
    changes = List.copyOf(changes);
    notes = List.copyOf(notes);
    emergency = List.copyOf(emergency);
  }

  /** The work a changed limit is then cited from. */
  Source source() {
    return new Source(
        SOURCE, "Local practice", name + ", by " + by, date.getYear(), "not published");
  }
}
