package hornbook.rulebook.check;

import hornbook.rulebook.Condition;
import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.Subjects;
import hornbook.rulebook.fact.Limit;
import hornbook.rulebook.file.FaultCollector;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Whether every limit can be told apart, is used, and is compared with numbers of its own unit. */
final class LimitCheck {
  private final Rulebook book;
  private final FaultCollector faults;

  LimitCheck(Rulebook book, FaultCollector faults) {
    this.book = book;
    this.faults = faults;
  }

  void check() {
    Set<String> bound = new HashSet<>();
    book.rules().values().forEach(rule -> rule.limits().forEach(bound::add));
    Map<String, Limit> first = new HashMap<>();
    for (Limit limit : book.limits()) {
      step(limit);
      if (faults.whole() && !limit.computing() && !bound.contains(limit.id())) {
        faults.at(
            limit,
            limit.id(),
            "no rule binds this limit",
            "bind it in a rule, take it out, or say uses: computing");
      }
      Limit other = first.putIfAbsent(limit.id(), limit);
      if (other != null) {
        overlap(limit);
        alike(limit, other);
      }
    }
    book.rules().values().forEach(this::units);
  }

  private void step(Limit limit) {
    if (limit.step() <= 0) {
      faults.at(
          limit,
          limit.id(),
          "the step has to be above zero",
          "write the smallest change worth telling apart");
    }
  }

  private void overlap(Limit limit) {
    for (Limit other : book.limits()) {
      if (other == limit) {
        return;
      }
      boolean limbs =
          limit.limbs() == null || other.limbs() == null || limit.limbs() == other.limbs();
      boolean age = limit.age() == null || other.age() == null || limit.age() == other.age();
      if (limit.id().equals(other.id()) && limbs && age) {
        faults.at(
            limit,
            limit.id(),
            "two entries hold for the same feet",
            "give them limbs or age that differ");
        return;
      }
    }
  }

  private void alike(Limit limit, Limit other) {
    boolean same =
        limit.unit().equals(other.unit())
            && limit.direction() == other.direction()
            && limit.inclusive() == other.inclusive()
            && limit.computing() == other.computing();
    if (!same) {
      faults.at(
          limit,
          limit.id(),
          "the entries of this limit differ in unit, direction, inclusive or uses",
          "only value and source may differ by limbs and age");
    }
  }

  private void units(RuleEntry rule) {
    for (Condition condition : rule.conditions()) {
      if (condition instanceof Condition.OfReading reading && Subjects.isNumber(reading.what())) {
        for (Limit limit : boundTo(rule, reading.limit())) {
          String unit = Subjects.unit(reading.what());
          if (!unit.equals(limit.unit())) {
            faults.at(
                rule,
                "$"
                    + reading.variable()
                    + " is compared with "
                    + limit.id()
                    + ", which is in "
                    + spelt(limit.unit())
                    + ", but "
                    + Subjects.label(reading.what())
                    + " is in "
                    + spelt(unit),
                "give the limit the unit " + spelt(unit) + ", or bind another");
            break;
          }
        }
      }
    }
  }

  private List<Limit> boundTo(RuleEntry rule, String variable) {
    return book.limits().stream()
        .filter(
            limit ->
                rule.conditions().stream()
                    .anyMatch(
                        one ->
                            one instanceof Condition.OfLimit of
                                && of.variable().equals(variable)
                                && of.id().equals(limit.id())))
        .toList();
  }

  private static String spelt(String unit) {
    return unit.isEmpty() ? "counts" : unit;
  }
}
