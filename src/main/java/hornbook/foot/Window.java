package hornbook.foot;

import java.util.ArrayList;
import java.util.List;

/** A run of edge along which a nail may enter, ends included; mm from the middle of the toe. */
public record Window(double from, double to) {

  /** What is left of some windows when the edge between two places is taken out. */
  public static List<Window> without(List<Window> windows, double from, double to) {
    List<Window> left = new ArrayList<>(windows.size() + 1);
    for (Window w : windows) {
      if (w.to() <= from || w.from() >= to) {
        left.add(w);
      } else {
        if (w.from() < from) {
          left.add(new Window(w.from(), from));
        }
        if (w.to() > to) {
          left.add(new Window(to, w.to()));
        }
      }
    }
    return left;
  }
}
