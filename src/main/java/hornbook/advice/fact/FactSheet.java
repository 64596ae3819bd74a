package hornbook.advice.fact;

import hornbook.foot.FootLimits;
import hornbook.rulebook.fact.CitedFact;
import hornbook.rulebook.fact.Crack;
import hornbook.rulebook.fact.Limit;
import hornbook.rulebook.fact.Reading;
import hornbook.rulebook.fact.Seen;
import hornbook.rulebook.fact.Stretch;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Everything known of one foot, as the rules meet it: words seen, numbers read, cracks, stretches
 * of wall, and the limits that hold for such a limb and age. A null list of cracks or stretches was
 * not looked at.
 *
 * @param seen the words observed, by field; a field that is absent was not looked at
 * @param readings the numbers known, by name
 * @param limits the limits that hold, by id
 * @param computing the same for computing with
 * @param held what calls for the vet on the other feet hold back on this one
 * @param unknown for every field or reading that is not known, the paths that would make it known
 */
public record FactSheet(
    Map<String, List<Seen>> seen,
    Map<String, Reading> readings,
    List<Crack> cracks,
    List<Stretch> wall,
    Map<String, Limit> limits,
    FootLimits computing,
    List<Held> held,
    Map<String, List<String>> unknown) {
  /** Unknown when low damage of the wall may go, or stay, with a trim nobody has measured. */
  public static final String TRIM = "trim";

  /** Unknown when a very lame horse went easier and nobody looked for pus that would explain it. */
  public static final String EASE = "ease";

  /** Unknown when a vet knows of the foot and nobody wrote down what was judged, and when. */
  public static final String JUDGED = "judged";

  /** The same sheet with what the other feet hold back. */
  public FactSheet holding(List<Held> other) {
    return new FactSheet(seen, readings, cracks, wall, limits, computing, other, unknown);
  }

  /** What is known of the foot itself. */
  public List<CitedFact> observed() {
    List<CitedFact> facts = new ArrayList<>(64);
    seen.values().forEach(facts::addAll);
    facts.addAll(readings.values());
    if (cracks != null) {
      facts.addAll(cracks);
    }
    if (wall != null) {
      facts.addAll(wall);
    }
    return facts;
  }
}
