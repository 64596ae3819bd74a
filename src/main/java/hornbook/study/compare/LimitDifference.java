package hornbook.study.compare;

import hornbook.assessment.word.Word;
import hornbook.rulebook.fact.Limit;
import java.util.ArrayList;
import java.util.List;

/** What is different in a limit. */
final class LimitDifference {
  private LimitDifference() {}

  static List<String> of(Limit old, Limit now) {
    List<String> how = new ArrayList<>();
    turn(how, "value", amount(old), amount(now));
    turn(how, "side", side(old), side(now));
    turn(how, "basis", old.basis().word(), now.basis().word());
    turn(how, "source", old.source() + ", " + old.locator(), now.source() + ", " + now.locator());
    turn(how, "safer", word(old.safer()), word(now.safer()));
    if (how.isEmpty()) {
      how.add("words or disputes");
    }
    return List.copyOf(how);
  }

  private static void turn(List<String> how, String what, String old, String now) {
    if (!old.equals(now)) {
      how.add(what + " " + old + " -> " + now);
    }
  }

  private static String amount(Limit limit) {
    double value = limit.value();
    String number = value == Math.rint(value) ? String.valueOf((long) value) : "" + value;
    return limit.unit().isEmpty() ? number : number + " " + limit.unit();
  }

  private static String side(Limit limit) {
    return word(limit.direction()) + (limit.inclusive() ? "" : ", itself not counted");
  }

  private static String word(Enum<?> constant) {
    return Word.kebab(constant.name());
  }
}
