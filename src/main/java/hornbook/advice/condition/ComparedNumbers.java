package hornbook.advice.condition;

import hornbook.advice.fact.FactSheet;
import hornbook.advice.fact.Truth;
import hornbook.rulebook.Condition;
import hornbook.rulebook.fact.Limit;
import hornbook.rulebook.fact.Reading;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The lines of a table that compare a number with a limit. A number is looked up once a foot,
 * however many lines ask for it, and a limit once for all feet it holds for.
 */
final class ComparedNumbers {
  /** More than the kinds of feet for which limits differ. */
  private static final int MOST_KEPT = 8;

  private final List<ConditionTable.Line> lines;
  private final List<String> numbers;

  /** For each line the place of its number; below zero where it compares none. */
  private final int[] numberOf;

  private volatile List<Limits> kept = List.of();

  /** The limit of each line, among the limits that hold for certain feet. */
  private record Limits(Map<String, Limit> holding, Limit[] ofLines) {}

  ComparedNumbers(List<ConditionTable.Line> lines) {
    this.lines = lines;
    this.numberOf = new int[lines.size()];
    Map<String, Integer> places = new LinkedHashMap<>();
    for (int line = 0; line < numberOf.length; line++) {
      numberOf[line] = -1;
      if (lines.get(line).condition() instanceof Condition.OfReading asked) {
        numberOf[line] = places.computeIfAbsent(asked.what(), what -> places.size());
      }
    }
    this.numbers = List.copyOf(places.keySet());
  }

  OnFoot on(FactSheet sheet) {
    return new OnFoot(sheet);
  }

  private Limit[] limits(Map<String, Limit> holding) {
    List<Limits> known = kept;
    for (Limits one : known) {
      if (one.holding() == holding) {
        return one.ofLines();
      }
    }
    Limit[] ofLines = new Limit[lines.size()];
    for (int line = 0; line < ofLines.length; line++) {
      if (numberOf[line] >= 0) {
        ofLines[line] = holding.get(lines.get(line).limit());
      }
    }
    List<Limits> more = new ArrayList<>(known);
    more.add(0, new Limits(holding, ofLines));
    kept = List.copyOf(more.subList(0, Math.min(MOST_KEPT, more.size())));
    return ofLines;
  }

  /** The lines as they stand on one foot. */
  final class OnFoot {
    private final FactSheet sheet;
    private final Limit[] limits;
    private final Reading[] readings = new Reading[numbers.size()];
    private final boolean[] looked = new boolean[numbers.size()];

    private OnFoot(FactSheet sheet) {
      this.sheet = sheet;
      this.limits = limits(sheet.limits());
    }

    /** Whether a condition of this line holds: what {@link Conditions} says of it. */
    Truth of(Condition condition, int line) {
      return numberOf[line] < 0
          ? Conditions.of(condition, lines.get(line).limit(), sheet)
          : Conditions.of((Condition.OfReading) condition, reading(numberOf[line]), limits[line]);
    }

    private Reading reading(int number) {
      if (!looked[number]) {
        readings[number] = sheet.readings().get(numbers.get(number));
        looked[number] = true;
      }
      return readings[number];
    }
  }
}
