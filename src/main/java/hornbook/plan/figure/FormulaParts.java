package hornbook.plan.figure;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/** The parts of a formula by the names of its holes, in order. */
public final class FormulaParts {
  private final Map<String, Figure> all = new LinkedHashMap<>();

  public static FormulaParts of(String name, Figure part) {
    return new FormulaParts().and(name, part);
  }

  public static FormulaParts none() {
    return new FormulaParts();
  }

  public FormulaParts and(String name, Figure part) {
    all.put(name, part);
    return this;
  }

  public Map<String, Figure> all() {
    return Collections.unmodifiableMap(all);
  }
}
