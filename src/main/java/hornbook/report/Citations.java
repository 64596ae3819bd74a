package hornbook.report;

import hornbook.rulebook.Rulebook;
import hornbook.rulebook.Source;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Cites works, short for the margin and in full for the list at the end. */
final class Citations {
  private static final Set<String> NO_WORK = Set.of("practice", "memory");

  private final Rulebook book;

  Citations(Rulebook book) {
    this.book = book;
  }

  /** Whether the key names a work, and not the ground that there is none. */
  static boolean work(String key) {
    return !NO_WORK.contains(key);
  }

  /** {@code O'Grady and Burns 2019}, or the key of what is no work. */
  String brief(String key) {
    Source source = book.sources().get(key);
    return work(key) ? source.author() + " " + source.year() : key;
  }

  /** {@code O'Grady and Burns, White line disease, 2019 (review article)}. */
  String full(String key) {
    Source source = book.sources().get(key);
    return work(key)
        ? source.author()
            + ", "
            + source.title()
            + ", "
            + source.year()
            + " ("
            + source.where()
            + ")"
        : source.title();
  }

  /** The works, each once, in short; what is no work is left out. */
  List<String> brief(Collection<String> keys) {
    Set<String> cited = new LinkedHashSet<>();
    keys.stream().filter(Citations::work).map(this::brief).forEach(cited::add);
    return new ArrayList<>(cited);
  }
}
