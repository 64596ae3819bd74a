package hornbook.rulebook.fact;

import java.util.List;

/** A reason for or against techniques and supports, named in {@code subjects}. */
public record Reason(Bearing bearing, List<String> subjects, List<CitedFact> because)
    implements Conclusion {
  public Reason {
    subjects = List.copyOf(subjects);
    because = List.copyOf(because);
  }

  /** {@code subjects} are names of techniques or supports, separated by spaces. */
  private static Reason of(Bearing bearing, String subjects, CitedFact... because) {
    return new Reason(bearing, List.of(subjects.split(" ")), List.of(because));
  }

  public static Reason speaksFor(String subjects, CitedFact... because) {
    return of(Bearing.FOR, subjects, because);
  }

  public static Reason speaksAgainst(String subjects, CitedFact... because) {
    return of(Bearing.AGAINST, subjects, because);
  }

  public static Reason needs(String subjects, CitedFact... because) {
    return of(Bearing.NEEDS, subjects, because);
  }

  public static Reason needsVet(String subjects, CitedFact... because) {
    return of(Bearing.NEEDS_VET, subjects, because);
  }

  public static Reason rulesOut(String subjects, CitedFact... because) {
    return of(Bearing.RULES_OUT, subjects, because);
  }
}
