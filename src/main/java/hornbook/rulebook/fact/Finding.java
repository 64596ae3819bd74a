package hornbook.rulebook.fact;

import java.util.List;

/** What readings and signs add up to, by its name in the trade; other rules build on it. */
public record Finding(String what, List<Cited> because) implements Cited, Conclusion {
  public Finding {
    because = List.copyOf(because);
  }

  public static Finding of(String what, Cited... because) {
    return new Finding(what, List.of(because));
  }
}
