package hornbook.plan;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/** What fills the holes of a sentence, by their names. */
final class Holes {
  private final Map<String, Hole> all = new LinkedHashMap<>();

  static Holes of(String name, Hole hole) {
    return new Holes().and(name, hole);
  }

  Holes and(String name, Hole hole) {
    all.put(name, hole);
    return this;
  }

  Map<String, Hole> all() {
    return Collections.unmodifiableMap(all);
  }
}
