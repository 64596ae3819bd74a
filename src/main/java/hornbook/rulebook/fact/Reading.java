package hornbook.rulebook.fact;

import java.util.List;
import org.kie.api.definition.type.ClassReactive;

/**
 * A number measured on the foot or computed from what was. A value known exactly has {@code low}
 * equal to {@code high}; where part of the foot was not mapped the two bound what it can be. {@code
 * fields} are the paths in the file it rests on.
 */
@ClassReactive
public record Reading(String what, double low, double high, List<String> fields)
    implements CitedFact {
  public Reading {
    low = rounded(low);
    high = rounded(high);
    if (!(low <= high)) {
      throw new IllegalArgumentException(what + ": " + low + " to " + high);
    }
    fields = List.copyOf(fields);
  }

  public Reading(String what, double value, List<String> fields) {
    this(what, value, value, fields);
  }

  public boolean exact() {
    return low == high;
  }

  /** Whether the value certainly lies on the side of the limit that the limit asks for. */
  public boolean satisfies(Limit limit) {
    return limit.allows(low) && limit.allows(high);
  }

  /** Whether the value certainly lies beyond the limit. */
  public boolean misses(Limit limit) {
    return !limit.allows(low) && !limit.allows(high);
  }

  /** Differences of decimals as written come out exact: a millionth is below any gauge. */
  private static double rounded(double value) {
    return Double.isInfinite(value) ? value : Math.rint(value * 1e6) / 1e6;
  }
}
