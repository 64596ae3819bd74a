package hornbook.foot.number;

import java.util.ArrayList;
import java.util.List;

/** A run of edge along which a nail may enter, ends included; mm from the middle of the toe. */
public record EdgeInterval(double from, double to) {

  /** What is left of some windows when the edge between two places is taken out. */
  public static List<EdgeInterval> without(List<EdgeInterval> windows, double from, double to) {
    List<EdgeInterval> left = new ArrayList<>(windows.size() + 1);
    for (EdgeInterval w : windows) {
      if (w.to() <= from || w.from() >= to) {
        left.add(w);
      } else {
        if (w.from() < from) {
          left.add(new EdgeInterval(w.from(), from));
        }
        if (w.to() > to) {
          left.add(new EdgeInterval(to, w.to()));
        }
      }
    }
    return left;
  }
}
