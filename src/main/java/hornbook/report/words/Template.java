package hornbook.report.words;

import hornbook.assessment.quantity.Units;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;

/**
 * A sentence of the rule base taken apart, its amounts in the units of the reader. A rule base has
 * so many sentences and no more, so each is taken apart once.
 *
 * @param literals the words before each hole, and those after the last
 * @param holes the names of the facts that fill the holes
 * @param whole the sentence, where it has no holes; else null
 */
record Template(List<String> literals, List<String> holes, String whole) {
  private static final Map<Units, Map<String, Template>> KNOWN = new EnumMap<>(Units.class);

  static {
    for (Units units : Units.values()) {
      KNOWN.put(units, new ConcurrentHashMap<>());
    }
  }

  static Template of(String text, Amounts amounts) {
    Map<String, Template> known = KNOWN.get(amounts.units());
    Template template = known.get(text);
    if (template == null) {
      template = read(text, new LiteralUnits(amounts));
      known.put(text, template);
    }
    return template;
  }

  private static Template read(String text, LiteralUnits units) {
    List<String> literals = new ArrayList<>();
    List<String> holes = new ArrayList<>();
    int from = 0;
    for (int hole = text.indexOf('{'); hole >= 0; hole = text.indexOf('{', from)) {
      int end = text.indexOf('}', hole);
      literals.add(units.in(text.substring(from, hole)));
      holes.add(text.substring(hole + 1, end));
      from = end + 1;
    }
    literals.add(units.in(text.substring(from)));
    String whole = null;
    if (holes.isEmpty()) {
      Sentence sentence = new Sentence();
      sentence.literal(literals.get(0));
      whole = sentence.text();
    }
    return new Template(List.copyOf(literals), List.copyOf(holes), whole);
  }
}
