package hornbook.study.exercise;

import hornbook.advice.FootAdvice;
import hornbook.advice.engine.Advisor;
import hornbook.advice.outcome.Outcome;
import hornbook.assessment.Assessment;
import hornbook.assessment.field.FieldValue;
import hornbook.assessment.field.Fields;
import hornbook.assessment.tree.Fault;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * Two cases that differ in one fact and in the answer. One fact is one field, the place where two
 * stretches of wall meet, one crack that is there or is not, or the lameness of one foot with how
 * and when it began; the horse's name and the day may differ as they like.
 */
public final class MinimalPair {
  private static final Set<String> FREE = Set.of("horse.name", "visit.date");

  private final Exercise one;
  private final Exercise other;
  private final Advisor advisor;

  /**
   * @param other the case that the first names as its pair; null where there is none of that name
   */
  public MinimalPair(Exercise one, Exercise other, Advisor advisor) {
    this.one = one;
    this.other = other;
    this.advisor = advisor;
  }

  /** What keeps the two from being a pair. */
  public List<Fault> faults() {
    List<Fault> faults = new ArrayList<>();
    if (other == null) {
      faults.add(
          LibraryCheck.fault(one, "pair", '"' + one.pair() + '"', "the name of another case"));
      return faults;
    }
    List<String> differing = differing();
    if (!oneFact(differing)) {
      String found = differing.isEmpty() ? "the same facts" : String.join(", ", differing);
      faults.add(LibraryCheck.fault(one, "pair", found, "two cases that differ in one fact"));
    }
    if (sameAnswer()) {
      faults.add(
          LibraryCheck.fault(
              one,
              "pair",
              "the same answer to both",
              "another urgency, technique, support, or technique ruled out"));
    }
    return faults;
  }

  /** The fields in which the two differ, by their paths. */
  public List<String> differing() {
    Map<String, Object> own = values(one.assessment());
    Map<String, Object> others = values(other.assessment());
    Set<String> paths = new TreeSet<>(own.keySet());
    paths.addAll(others.keySet());
    paths.removeIf(path -> Objects.equals(own.get(path), others.get(path)));
    return List.copyOf(paths);
  }

  private static Map<String, Object> values(Assessment assessment) {
    Map<String, Object> values = new LinkedHashMap<>();
    for (FieldValue field : Fields.values(assessment).toList()) {
      boolean rows =
          field.value() instanceof List<?> list && list.stream().anyMatch(Record.class::isInstance);
      if (!rows && !FREE.contains(field.path())) {
        values.put(field.path(), field.value());
      }
    }
    return values;
  }

  private boolean oneFact(List<String> differing) {
    if (differing.size() == 1) {
      return true;
    }
    return oneCrack(differing) || meeting(differing) || oneLameness(differing);
  }

  /** How lame one foot is, and how and when that began: a sound horse has neither. */
  private static boolean oneLameness(List<String> differing) {
    Set<String> feet =
        differing.stream()
            .map(path -> path.replaceAll("\\.(onset|lameForDays)$", ".lameness"))
            .collect(Collectors.toSet());
    return feet.size() == 1 && differing.contains(feet.iterator().next());
  }

  /** One crack more, or one less: all fields of one row, and perhaps the list itself. */
  private static boolean oneCrack(List<String> differing) {
    Set<String> rows =
        differing.stream()
            .map(path -> path.replaceAll("(\\.cracks\\[\\d+]).*", "$1"))
            .filter(path -> !path.endsWith(".cracks"))
            .collect(Collectors.toSet());
    return rows.size() == 1 && rows.iterator().next().contains(".cracks[");
  }

  /** The end of one stretch and the beginning of the next, at the same place. */
  private boolean meeting(List<String> differing) {
    if (differing.size() != 2) {
      return false;
    }
    Map<String, Object> own = values(one.assessment());
    Map<String, Object> others = values(other.assessment());
    String first = differing.get(0);
    String second = differing.get(1);
    boolean ends =
        first.matches(".*\\.wall\\[\\d+]\\.(from|to)")
            && second.matches(".*\\.wall\\[\\d+]\\.(from|to)");
    return ends
        && Objects.equals(own.get(first), own.get(second))
        && Objects.equals(others.get(first), others.get(second));
  }

  private boolean sameAnswer() {
    List<FootAdvice> own = advisor.judge(one.assessment()).feet();
    List<FootAdvice> others = advisor.judge(other.assessment()).feet();
    boolean same = own.size() == others.size();
    for (int at = 0; same && at < own.size(); at++) {
      same = Outcome.of(own.get(at)).sameAdvice(Outcome.of(others.get(at)));
    }
    return same;
  }
}
