package hornbook.rulebook.practice;

import hornbook.assessment.read.KeyReader;
import hornbook.assessment.tree.Fault;
import hornbook.assessment.tree.LocatedValue;
import hornbook.rulebook.LimitChange;
import hornbook.rulebook.Practice;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.fact.Basis;
import hornbook.rulebook.fact.Limit;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * The limits a local practice moves, each compared with the rule base. A limit that calls the vet
 * can be moved to call sooner, never later; any other needs leave to be moved toward less safety.
 */
final class LimitChanges {
  private final Rulebook book;
  private final boolean acceptLessSafe;
  private final List<Fault> faults;
  private final Set<String> referring;
  private final List<String> ids;
  private final List<LimitChange> made = new ArrayList<>();
  private final List<KeyReader> entries = new ArrayList<>();

  LimitChanges(Rulebook book, boolean acceptLessSafe, List<Fault> faults) {
    this.book = book;
    this.acceptLessSafe = acceptLessSafe;
    this.faults = faults;
    this.referring = ReferralLimits.of(book);
    this.ids = book.limits().stream().map(Limit::id).distinct().toList();
  }

  List<LimitChange> made() {
    return made;
  }

  /** Reads one entry; a limit that differs by limb or age is changed where both are as asked. */
  void take(LocatedValue entry) {
    KeyReader keys = KeyReader.of(entry, faults, "id", "value", "reason", "limbs", "age");
    if (keys == null) {
      return;
    }
    String id = keys.word("id", ids, true);
    String reason = keys.text("reason");
    String limbs = keys.word("limbs", List.of("fore", "hind"), false);
    String age = keys.word("age", List.of("adult", "foal"), false);
    if (id == null) {
      return;
    }
    List<Limit> meant = book.limits().stream().filter(one -> meant(one, id, limbs, age)).toList();
    if (meant.isEmpty()) {
      keys.refuse("id", "no entry of " + id + " for such feet", kinds(id), null);
      return;
    }
    if (keys.scalar("value") == null) {
      keys.refuse("value", "nothing", new LimitAmount(meant.get(0)).allowed(), null);
      return;
    }
    meant.forEach(before -> change(keys, before, reason));
    Double value = new LimitAmount(meant.get(0)).of(keys.scalar("value"));
    if (value != null && meant.stream().allMatch(before -> before.value() == value)) {
      keys.refuse("value", "the value " + id + " has already", "another value, or no entry", null);
    }
  }

  private static boolean meant(Limit limit, String id, String limbs, String age) {
    return limit.id().equals(id)
        && (limbs == null || word(limit.limbs()).equals(limbs))
        && (age == null || word(limit.age()).equals(age));
  }

  private void change(KeyReader keys, Limit before, String reason) {
    LimitAmount amount = new LimitAmount(before);
    Double value = amount.of(keys.scalar("value"));
    boolean within = value != null && value >= amount.least() && value <= amount.most();
    boolean counted = before.unit().equals("grade") || before.unit().isEmpty();
    if (!within || counted && before.step() == 1 && value != Math.rint(value)) {
      keys.refuse("value", keys.scalar("value").kind(), amount.allowed(), null);
      return;
    }
    if (made.stream().anyMatch(one -> one.before() == before)) {
      keys.refuse("id", "a second change of " + before.id(), "each limit once", null);
      return;
    }
    if (value == before.value()) {
      return;
    }
    LimitChange change = new LimitChange(before, moved(before, value, reason), reason);
    if (change.lessSafe()) {
      lessSafe(keys, change);
    } else if (eitherWay(before)) {
      keys.refuse(
          "value",
          "a move of " + before.id() + ", which may take a call for the vet away either way",
          "the value it has, " + amount(before) + ": measure the foot instead",
          null);
    }
    made.add(change);
    entries.add(keys);
  }

  /** What the computing assumes where nobody measured, with no side that is always the safer. */
  private boolean eitherWay(Limit limit) {
    return limit.computing()
        && limit.safer() == Limit.Safer.NEITHER
        && referring.contains(limit.id());
  }

  /** Refuses changes that leave limits out of the order the computing needs. */
  void order() {
    List<Limit> limits = new ArrayList<>();
    for (Limit limit : book.limits()) {
      int at = made.stream().map(LimitChange::before).toList().indexOf(limit);
      limits.add(at < 0 ? limit : made.get(at).after());
    }
    for (ComputingOrder.Breach breach : ComputingOrder.breaches(limits)) {
      int at = made.stream().map(LimitChange::after).toList().indexOf(breach.limit());
      if (at >= 0) {
        KeyReader keys = entries.get(at);
        keys.refuse(
            "value", keys.scalar("value").kind(), breach.limit().id() + " " + breach.has(), null);
      }
    }
  }

  private void lessSafe(KeyReader keys, LimitChange change) {
    Limit before = change.before();
    String side = before.safer() == Limit.Safer.UP ? "up" : "down";
    String allowed = "from " + amount(before) + " " + side;
    if (referring.contains(before.id())) {
      keys.refuse(
          "value",
          "a move of " + before.id() + " that would call the vet later",
          allowed + ": what calls the vet can be moved to call sooner, never later",
          null);
    } else if (!acceptLessSafe) {
      keys.refuse(
          "value",
          "a move of " + before.id() + " toward less safety",
          allowed + ", or any other with --accept-less-safe",
          null);
    }
  }

  /** A moved limit rests on the practice that moved it, and is no better than practice. */
  private static Limit moved(Limit limit, double value, String reason) {
    return new Limit(
        limit.id(),
        limit.label(),
        value,
        limit.unit(),
        limit.direction(),
        limit.inclusive(),
        limit.limbs(),
        limit.age(),
        Practice.SOURCE,
        "in place of " + amount(limit) + ": " + reason,
        limit.basis().weaker(Basis.PRACTICE),
        limit.safer(),
        limit.step(),
        limit.disputes(),
        limit.computing());
  }

  private static String amount(Limit limit) {
    return (LimitAmount.shown(limit.value()) + " " + limit.unit()).strip();
  }

  private String kinds(String id) {
    List<String> entries = new ArrayList<>();
    for (Limit limit : book.limits()) {
      if (limit.id().equals(id)) {
        entries.add((word(limit.limbs()) + " " + word(limit.age())).strip());
      }
    }
    return entries.equals(List.of("")) ? "no limbs and no age" : String.join("; ", entries);
  }

  private static String word(Enum<?> constant) {
    return constant == null ? "" : constant.name().toLowerCase(java.util.Locale.ROOT);
  }
}
