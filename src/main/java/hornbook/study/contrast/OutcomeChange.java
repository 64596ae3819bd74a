package hornbook.study.contrast;

import hornbook.advice.Verdict;
import hornbook.advice.outcome.Outcome;
import hornbook.rulebook.fact.Urgency;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * One thing in the advice that turns: a call for the vet, or the verdict on a technique or a
 * support.
 *
 * @param id of the danger, technique or support
 * @param from the urgency or verdict as a word; {@code none} where the vet is not called
 */
public record OutcomeChange(Kind kind, String id, String from, String to) {
  public static final String NONE = "none";

  /** What turns. */
  public enum Kind {
    REFERRAL,
    TECHNIQUE,
    SUPPORT
  }

  /** Whether a technique comes to be first choice. */
  public boolean toFirstChoice() {
    return kind == Kind.TECHNIQUE && to.equals(Verdict.FIRST_CHOICE.word());
  }

  /** Whether a technique ceases to be first choice. */
  public boolean fromFirstChoice() {
    return kind == Kind.TECHNIQUE && from.equals(Verdict.FIRST_CHOICE.word());
  }

  /** Whether a call for the vet falls away or may wait longer. */
  public boolean easesCall() {
    return kind == Kind.REFERRAL && rank(to) > rank(from);
  }

  private static int rank(String urgency) {
    for (Urgency one : Urgency.values()) {
      if (one.word().equals(urgency)) {
        return one.ordinal();
      }
    }
    return Urgency.values().length;
  }

  /**
   * Whether it is more than a turn of the same thing that fewer changes bring about already, only
   * with another verdict at its end; a technique that comes first and a call for the vet always
   * are.
   */
  public boolean newBeside(List<OutcomeChange> fewer) {
    boolean tellsApart = kind == Kind.REFERRAL || toFirstChoice();
    return !fewer.contains(this)
        && (tellsApart || fewer.stream().noneMatch(turn -> turn.id.equals(id)));
  }

  /** All that turns between two ways a foot stands: calls for the vet, techniques, supports. */
  public static List<OutcomeChange> between(Outcome one, Outcome other) {
    List<OutcomeChange> turns = new ArrayList<>();
    Map<String, Urgency> dangers = new TreeMap<>(other.referrals());
    one.referrals().forEach((id, soon) -> dangers.merge(id, soon, OutcomeChange::sooner));
    List<String> mostUrgentFirst = new ArrayList<>(dangers.keySet());
    mostUrgentFirst.sort(Comparator.comparing(dangers::get));
    for (String id : mostUrgentFirst) {
      String from = word(one.referrals().get(id));
      String to = word(other.referrals().get(id));
      add(turns, Kind.REFERRAL, id, from, to);
    }
    add(turns, Kind.TECHNIQUE, one.techniques(), other.techniques());
    add(turns, Kind.SUPPORT, one.supports(), other.supports());
    return turns;
  }

  private static void add(
      List<OutcomeChange> turns, Kind kind, Map<String, Verdict> one, Map<String, Verdict> other) {
    one.forEach((id, from) -> add(turns, kind, id, from.word(), other.get(id).word()));
  }

  private static void add(List<OutcomeChange> turns, Kind kind, String id, String from, String to) {
    if (!from.equals(to)) {
      turns.add(new OutcomeChange(kind, id, from, to));
    }
  }

  private static Urgency sooner(Urgency one, Urgency other) {
    return one.compareTo(other) <= 0 ? one : other;
  }

  private static String word(Urgency urgency) {
    return urgency == null ? NONE : urgency.word();
  }
}
