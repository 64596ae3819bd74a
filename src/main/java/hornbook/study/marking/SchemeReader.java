package hornbook.study.marking;

import hornbook.assessment.tree.Fault;
import hornbook.assessment.tree.FileTree;
import hornbook.assessment.tree.LocatedValue;
import hornbook.assessment.tree.LocatedValue.Group;
import hornbook.assessment.tree.LocatedValue.Scalar;
import hornbook.study.exercise.Entries;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Reads a marking scheme and checks it. */
public final class SchemeReader {
  private static final List<String> KEYS =
      List.of(
          "format", "name", "step", "dangerous", "defensible", "anotherReason", "wrong", "points");
  private static final List<String> POINTS =
      Arrays.stream(MarkedPoint.values()).map(MarkedPoint::word).toList();
  private static final List<String> WORTH = List.of("marks", "enough", "says");

  private final Entries entries;

  private SchemeReader(List<Fault> faults) {
    this.entries = new Entries(faults);
  }

  /** The scheme in a file; of use only where no fault was found. */
  public static MarkingScheme read(byte[] bytes, String shown, List<Fault> faults) {
    LocatedValue tree = FileTree.read(bytes, shown, "a marking scheme", faults);
    return tree == null ? null : new SchemeReader(faults).scheme(tree);
  }

  private MarkingScheme scheme(LocatedValue tree) {
    Group whole = entries.group(tree, KEYS);
    if (whole == null) {
      return null;
    }
    if (entries.word(whole, "format", List.of(MarkingScheme.FORMAT)) == null
        && Entries.given(whole, "format") == null) {
      entries.missing(whole, "format", MarkingScheme.FORMAT);
    }
    String name = entries.text(whole, "name");
    Map<MarkedPoint, MarkingScheme.Worth> points = new EnumMap<>(MarkedPoint.class);
    LocatedValue all = Entries.given(whole, "points");
    if (all == null) {
      entries.missing(whole, "points", "marks for " + String.join(", ", POINTS));
    } else if (entries.group(all, POINTS) != null) {
      for (MarkedPoint point : MarkedPoint.values()) {
        LocatedValue worth = ((Group) all).get(point.word());
        if (worth != null) {
          points.put(point, worth(worth, point));
        }
      }
    }
    return new MarkingScheme(
        name == null ? "own" : name,
        number(whole, "step", 0.05, 1, 0.5),
        number(whole, "dangerous", 0, 1, 0.4),
        number(whole, "defensible", 0, 1, 0.5),
        number(whole, "anotherReason", 0, 1, 0.5),
        number(whole, "wrong", 0, 1, 0.25),
        points);
  }

  private MarkingScheme.Worth worth(LocatedValue value, MarkedPoint point) {
    Group group = entries.group(value, WORTH);
    if (group == null) {
      return new MarkingScheme.Worth(0, 0, point.word());
    }
    if (Entries.given(group, "marks") == null) {
      entries.missing(group, "marks", "a number from 0 to 100");
    }
    String says = entries.text(group, "says");
    return new MarkingScheme.Worth(
        number(group, "marks", 0, 100, 0),
        (int) number(group, "enough", 0, 50, 0),
        says == null ? point.word() : says);
  }

  private double number(Group group, String key, double least, double most, double usual) {
    LocatedValue value = Entries.given(group, key);
    if (value == null) {
      return usual;
    }
    String text = value instanceof Scalar scalar ? scalar.text().strip() : "";
    if (text.matches("\\d{1,3}(\\.\\d{1,4})?")) {
      double number = Double.parseDouble(text);
      if (number >= least && number <= most) {
        return number;
      }
    }
    entries.refuse(
        value, value.kind(), "a number from " + plain(least) + " to " + plain(most), null);
    return usual;
  }

  private static String plain(double number) {
    return number == Math.rint(number) ? Long.toString((long) number) : Double.toString(number);
  }
}
