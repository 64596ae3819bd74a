package hornbook.plan;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/** The parts of a formula by the names of its holes, in order. */
final class Parts {
  private final Map<String, Figure> all = new LinkedHashMap<>();

  static Parts of(String name, Figure part) {
    return new Parts().and(name, part);
  }

  static Parts none() {
    return new Parts();
  }

  Parts and(String name, Figure part) {
    all.put(name, part);
    return this;
  }

  Map<String, Figure> all() {
    return Collections.unmodifiableMap(all);
  }
}
