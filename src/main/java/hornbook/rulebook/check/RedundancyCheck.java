package hornbook.rulebook.check;

import hornbook.rulebook.RuleConclusion;
import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.fact.Bearing;
import hornbook.rulebook.fact.Urgency;
import hornbook.rulebook.file.FaultCollector;
import java.util.ArrayList;
import java.util.List;

/**
 * Rules that stand or fall together, by what they ask: one that says again what another says, and
 * one whose word is always overruled.
 */
final class RedundancyCheck {
  private final List<RuleEntry> all;
  private final AllDemands askings;
  private final FaultCollector faults;

  RedundancyCheck(Rulebook book, AllDemands askings, FaultCollector faults) {
    this.all = List.copyOf(book.rules().values());
    this.askings = askings;
    this.faults = faults;
  }

  void check() {
    List<RuleEntry> rules = all.stream().filter(rule -> !faults.named(rule.id())).toList();
    for (RuleEntry one : rules) {
      for (RuleEntry other : rules) {
        if (one != other
            && related(one.outcome(), other.outcome())
            && askings.alwaysWith(one, other)) {
          boolean alike = askings.alwaysWith(other, one);
          if (!alike || one.id().compareTo(other.id()) > 0) {
            compare(one, other, alike);
          }
        }
      }
    }
  }

  /** Whether two conclusions speak of the same thing: only then can they repeat or deny. */
  private static boolean related(RuleConclusion one, RuleConclusion other) {
    if (one instanceof RuleConclusion.Finds finds) {
      return other instanceof RuleConclusion.Finds also && also.finding().equals(finds.finding());
    }
    if (one instanceof RuleConclusion.Refers refers) {
      return other instanceof RuleConclusion.Refers also && also.id().equals(refers.id());
    }
    if (one instanceof RuleConclusion.Cautions caution) {
      return other instanceof RuleConclusion.Cautions also && also.id().equals(caution.id());
    }
    return other instanceof RuleConclusion.Reasons;
  }

  /**
   * @param narrow the rule that never fires without the other
   * @param alike whether the other never fires without it either
   */
  private void compare(RuleEntry narrow, RuleEntry wide, boolean alike) {
    if (narrow.outcome() instanceof RuleConclusion.Finds own) {
      says(narrow, wide, "makes the same finding, " + own.finding());
    } else if (narrow.outcome() instanceof RuleConclusion.Refers own
        && wide.outcome() instanceof RuleConclusion.Refers other) {
      refers(narrow, own, wide, other, alike);
    } else if (narrow.outcome() instanceof RuleConclusion.Cautions own) {
      says(narrow, wide, "gives the same caution, " + own.id());
    } else if (narrow.outcome() instanceof RuleConclusion.Reasons own
        && wide.outcome() instanceof RuleConclusion.Reasons other) {
      reasons(narrow, own, wide, other, alike);
    }
  }

  private void says(RuleEntry narrow, RuleEntry wide, String what) {
    faults.at(
        narrow,
        "wherever the rule fires, " + wide.id() + " fires too and " + what,
        "keep one of them, or ask for something the other does not");
  }

  private void refers(
      RuleEntry narrow,
      RuleConclusion.Refers own,
      RuleEntry wide,
      RuleConclusion.Refers other,
      boolean alike) {
    if (own.urgency().compareTo(other.urgency()) > 0) {
      faults.at(
          narrow,
          "wherever the rule fires, "
              + wide.id()
              + " fires too and calls the vet over the same danger "
              + soon(other.urgency())
              + ", so this one, "
              + soon(own.urgency())
              + ", is never shown",
          "the worse state has to be the more urgent one: change an urgency, or give another id");
    } else if (alike && own.urgency() == other.urgency()) {
      says(narrow, wide, "calls the vet over the same danger, " + own.id());
    } else if (alike) {
      faults.at(
          narrow,
          "the rule and " + wide.id() + " call the vet over the same feet with two urgencies",
          "keep the more urgent one");
    }
  }

  /** A need may stand beside a reason for: that is how a thing is wanted, but not yet. */
  private static boolean opposite(Bearing one, Bearing other) {
    Bearing first = one.compareTo(other) < 0 ? one : other;
    Bearing second = one.compareTo(other) < 0 ? other : one;
    return first == Bearing.FOR && (second == Bearing.AGAINST || second == Bearing.RULES_OUT);
  }

  private static boolean dissent(RuleEntry one, RuleEntry other) {
    return one.text().dissents().contains(other.id()) || other.text().dissents().contains(one.id());
  }

  private static String soon(Urgency urgency) {
    return "\"" + urgency.word() + "\"";
  }

  private void reasons(
      RuleEntry narrow,
      RuleConclusion.Reasons own,
      RuleEntry wide,
      RuleConclusion.Reasons other,
      boolean alike) {
    List<String> shared = new ArrayList<>(own.subjects());
    shared.retainAll(other.subjects());
    String both = String.join(" ", shared);
    if (shared.isEmpty()) {
      if (alike
          && own.bearing() == other.bearing()
          && narrow.text().says().equals(wide.text().says())) {
        faults.at(
            narrow,
            "the rule and "
                + wide.id()
                + " are always silent together and say the same in the same words",
            "make them one rule that names the subjects of both");
      }
    } else if (own.bearing() == other.bearing()) {
      if (alike && own.subjects().containsAll(other.subjects())) {
        says(narrow, wide, "bears the same way on " + both);
      }
    } else if (own.bearing() == Bearing.FOR && other.bearing() == Bearing.RULES_OUT) {
      faults.at(
          narrow,
          "the rule supports " + both + ", but wherever it fires " + wide.id() + " rules it out",
          "two rules say opposite things on the same foot: settle which of them holds");
    } else if (alike && opposite(own.bearing(), other.bearing()) && !dissent(narrow, wide)) {
      faults.at(
          narrow,
          "the rule and " + wide.id() + " say opposite things of " + both + " on the same foot",
          "settle which holds, ask for something the other does not, or where one is another"
              + " author's view write dissents: ["
              + wide.id()
              + "] beside its says");
    }
  }
}
