package hornbook.rulebook.fact;

import java.util.List;
import org.kie.api.definition.type.ClassReactive;

/** What readings and signs add up to, by its name in the trade; other rules build on it. */
@ClassReactive
public record Finding(String what, List<CitedFact> because) implements CitedFact, Conclusion {
  public Finding {
    because = List.copyOf(because);
  }

  public static Finding of(String what, CitedFact... because) {
    return new Finding(what, List.of(because));
  }
}
