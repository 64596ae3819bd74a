package hornbook.report.words;

import hornbook.advice.Advice;
import hornbook.advice.FootAdvice;
import hornbook.assessment.Foot;
import hornbook.assessment.Limb;
import hornbook.assessment.WallStretch;
import java.util.ArrayList;
import java.util.List;

/**
 * What was begun and left incomplete, so that it counts for nothing or keeps the wall from being
 * worked out: a row of the map without its side, a map without the size of the foot.
 */
public record Incomplete(String field, String says) {

  public static List<Incomplete> of(Advice advice, FootAdvice foot) {
    List<Foot> feet = advice.assessment().feet();
    for (int i = 0; i < feet.size(); i++) {
      if (feet.get(i).limb() == foot.limb()) {
        return of(feet.get(i), "feet[" + i + "].");
      }
    }
    return List.of();
  }

  private static List<Incomplete> of(Foot foot, String path) {
    List<Incomplete> all = new ArrayList<>();
    List<WallStretch> wall = foot.wall() == null ? List.of() : foot.wall();
    for (int row = 0; row < wall.size(); row++) {
      String lacks = lacks(wall.get(row));
      if (lacks != null) {
        all.add(row(path + "wall[" + row + "]." + lacks, lacks, foot.limb()));
      }
    }
    if (!wall.isEmpty()) {
      if (foot.measures().bearingLength() == null) {
        all.add(size(path + "measures.bearingLength"));
      }
      if (foot.measures().width() == null) {
        all.add(size(path + "measures.width"));
      }
    }
    return all;
  }

  private static String lacks(WallStretch stretch) {
    if (stretch.side() == null) {
      return "side";
    }
    if (stretch.from() == null) {
      return "from";
    }
    if (stretch.to() == null) {
      return "to";
    }
    return stretch.state() == null ? "state" : null;
  }

  private static Incomplete row(String field, String lacks, Limb limb) {
    String which = lacks.equals("side") ? " (medial or lateral)" : "";
    return new Incomplete(
        field,
        FieldNames.of(field)
            + which
            + " is missing: this stretch is left out of every count on the "
            + FieldNames.of(limb)
            + ". Field: "
            + field);
  }

  private static Incomplete size(String field) {
    return new Incomplete(
        field,
        FieldNames.of(field)
            + " is missing: without it nobody can work out how much of the wall is left, or"
            + " where nails fit. Field: "
            + field);
  }
}
