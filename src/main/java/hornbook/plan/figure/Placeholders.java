package hornbook.plan.figure;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/** What fills the holes of a sentence, by their names. */
public final class Placeholders {
  private final Map<String, Placeholder> all = new LinkedHashMap<>();

  /** For a sentence without holes. */
  public static Placeholders none() {
    return new Placeholders();
  }

  public static Placeholders of(String name, Placeholder hole) {
    return new Placeholders().and(name, hole);
  }

  public Placeholders and(String name, Placeholder hole) {
    all.put(name, hole);
    return this;
  }

  public Map<String, Placeholder> all() {
    return Collections.unmodifiableMap(all);
  }
}
