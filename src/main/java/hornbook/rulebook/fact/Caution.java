package hornbook.rulebook.fact;

import java.util.List;

/** A warning that belongs to this horse, this foot or the material in hand. */
public record Caution(String id, List<CitedFact> because) implements Conclusion {
  public Caution {
    because = List.copyOf(because);
  }

  public static Caution about(String id, CitedFact... because) {
    return new Caution(id, List.of(because));
  }
}
