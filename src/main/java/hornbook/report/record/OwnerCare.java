package hornbook.report.record;

import com.fasterxml.jackson.databind.JsonNode;
import hornbook.record.Entry;
import hornbook.report.words.Sentence;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Everyday care of the feet of a horse in so many lines: what holds for all feet is said once. */
final class OwnerCare {
  private static final List<String> NEXT =
      List.of("owner.next", "owner.next-days", "owner.untouched-next");

  /** What makes room where there are too many lines, the first of them first. */
  private static final List<String> GIVES_WAY =
      List.of(
          "owner.pick-out",
          "owner.wait-ready",
          "owner.nothing-on",
          "owner.chips",
          "owner.wait-farrier",
          "owner.clenches",
          "owner.brush-out",
          "owner.soft-ground",
          "owner.edges",
          "owner.wait-tell",
          "owner.wait-look",
          "owner.heat",
          "owner.wait-stand",
          "owner.wait-ground",
          "owner.wait-medicine");

  /** A line and the feet it is about. */
  private record Line(String id, String says, Set<String> limbs) {}

  private OwnerCare() {}

  /**
   * The lines.
   *
   * @param feet the lines kept for each foot, by its name
   * @param room how many lines there may be; at least 2
   */
  static List<String> lines(Map<String, JsonNode> feet, int room) {
    List<Line> all = new ArrayList<>();
    feet.forEach((limb, owner) -> owner.forEach(line -> add(all, limb, line)));
    for (String id : GIVES_WAY) {
      if (all.size() > room) {
        all.removeIf(line -> id.equals(line.id()));
      }
    }
    List<String> lines = new ArrayList<>();
    all.stream().filter(line -> !next(line)).forEach(line -> lines.add(told(line, feet.size())));
    all.stream().filter(OwnerCare::next).forEach(line -> lines.add(told(line, feet.size())));
    while (lines.size() > room) {
      String last = lines.remove(lines.size() - 1);
      lines.add(lines.remove(lines.size() - 1) + " " + last);
    }
    return lines;
  }

  private static void add(List<Line> all, String limb, JsonNode line) {
    String says = Entry.text(line, "says");
    for (Line one : all) {
      if (one.says().equals(says)) {
        one.limbs().add(limb);
        return;
      }
    }
    all.add(new Line(Entry.text(line, "id"), says, new LinkedHashSet<>(Set.of(limb))));
  }

  /** The line on the next visit stands last. */
  private static boolean next(Line line) {
    return NEXT.contains(String.valueOf(line.id()));
  }

  private static String told(Line line, int feet) {
    return line.limbs().size() == feet
        ? line.says()
        : Sentence.capital(String.join(" and ", line.limbs())) + ": " + line.says();
  }
}
