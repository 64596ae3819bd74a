package hornbook.report.words;

import hornbook.rulebook.Rulebook;
import hornbook.rulebook.Source;
import hornbook.rulebook.fact.Limit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** Cites works, short for the margin and in full for the list at the end. */
public final class Citations {
  private final Rulebook book;

  public Citations(Rulebook book) {
    this.book = book;
  }

  /** {@code O'Grady and Burns 2019}, or the key of what is no work. */
  public String brief(String key) {
    return book.sources().get(key).brief();
  }

  /** The place in its source that a limit stands at. */
  public String locator(Limit limit) {
    return book.locator(limit);
  }

  /** {@code O'Grady and Burns, White line disease, 2019 (review article)}. */
  public String full(String key) {
    Source source = book.sources().get(key);
    return Source.work(key)
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
  public List<String> brief(Collection<String> keys) {
    Set<String> cited = new LinkedHashSet<>();
    keys.stream().filter(Source::work).map(this::brief).forEach(cited::add);
    return new ArrayList<>(cited);
  }
}
