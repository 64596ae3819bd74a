package hornbook.study.compare;

import hornbook.rulebook.RuleEntry;
import java.util.ArrayList;
import java.util.List;

/** What is different in a rule; where it stands in its file is no difference. */
final class RuleDifference {
  private RuleDifference() {}

  static List<String> of(RuleEntry old, RuleEntry now) {
    List<String> how = new ArrayList<>();
    turn(how, "what it asks", old.conditions(), now.conditions());
    turn(how, "what it concludes", old.outcome(), now.outcome());
    turn(how, "title", old.title(), now.title());
    turn(how, "what it says", old.text().says(), now.text().says());
    turn(how, "what to do meanwhile", old.text().meanwhile(), now.text().meanwhile());
    turn(how, "techniques", old.text().techniques(), now.text().techniques());
    turn(how, "sources", old.text().sources(), now.text().sources());
    turn(how, "basis", old.basis(), now.basis());
    turn(how, "why", old.why() + old.silent(), now.why() + now.silent());
    return List.copyOf(how);
  }

  private static void turn(List<String> how, String what, Object old, Object now) {
    if (!java.util.Objects.equals(old, now)) {
      how.add(what);
    }
  }
}
