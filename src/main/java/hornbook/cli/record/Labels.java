package hornbook.cli.record;

import hornbook.record.Departures;
import hornbook.rulebook.NamedOption;
import hornbook.rulebook.Rulebook;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

/** The names of techniques in words of the trade; one that is not known stands as it is. */
final class Labels {
  private Labels() {}

  static UnaryOperator<String> of(Rulebook book) {
    return id ->
        named(book).stream()
            .filter(one -> one.id().equals(id))
            .map(NamedOption::label)
            .findFirst()
            .orElse(id);
  }

  /** The same with their names. */
  static List<NamedOption> named(Rulebook book) {
    List<NamedOption> all = new ArrayList<>(book.techniques());
    all.add(new NamedOption(Departures.NOTHING, "nothing put on"));
    return all;
  }

  /** What may be chosen: the techniques, and that nothing goes on. */
  static List<String> all(Rulebook book) {
    return named(book).stream().map(NamedOption::id).toList();
  }
}
