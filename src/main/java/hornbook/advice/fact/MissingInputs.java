package hornbook.advice.fact;

import hornbook.assessment.Foot;
import hornbook.assessment.WallCrack;
import hornbook.assessment.WallStretch;
import hornbook.rulebook.ReadingKind;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * What is missing for a computed reading: the fields left out, or what the rows of a map leave
 * open.
 */
final class MissingInputs {
  private static final String WALL = ".wall";
  private static final String CRACKS = ".cracks";

  private final String path;
  private final List<String> paths = new ArrayList<>();

  private MissingInputs(String path) {
    this.path = path;
  }

  /**
   * The paths that would make a reading known.
   *
   * @param fields everything the reading rests on
   * @param path of the foot in the file
   * @param unknown paths that alone would make something known that is not
   */
  static List<String> paths(
      ReadingKind kind, List<String> fields, Foot foot, String path, Set<String> unknown) {
    MissingInputs missing = new MissingInputs(path);
    for (String field : fields) {
      if (unknown.contains(field) || field.startsWith("feet[") && !field.startsWith(path)) {
        missing.paths.add(field);
      }
    }
    String wall = path + WALL;
    if (foot.wall() != null && fields.contains(wall)) {
      missing.inWall(kind, foot.wall());
    }
    if (foot.cracks() != null && fields.contains(path + CRACKS)) {
      missing.inCracks(foot.cracks());
    }
    if (missing.paths.isEmpty()) {
      missing.paths.add(fields.contains(wall) ? wall : fields.get(0));
    }
    return List.copyOf(missing.paths);
  }

  private void inWall(ReadingKind kind, List<WallStretch> wall) {
    String name = kind.name();
    boolean thickness = name.startsWith("NAIL") || name.startsWith("THINNEST");
    boolean height =
        name.startsWith("TALL") || name.startsWith("WEEKS") || name.startsWith("TRIMMED");
    for (int row = 0; row < wall.size(); row++) {
      WallStretch stretch = wall.get(row);
      add(stretch.side(), WALL, row, "side");
      add(stretch.from(), WALL, row, "from");
      add(stretch.to(), WALL, row, "to");
      add(stretch.state(), WALL, row, "state");
      add(thickness ? stretch.thickness() : "", WALL, row, "thickness");
      add(height ? stretch.height() : "", WALL, row, "height");
    }
  }

  private void inCracks(List<WallCrack> cracks) {
    for (int row = 0; row < cracks.size(); row++) {
      add(cracks.get(row).place(), CRACKS, row, "place");
      add(cracks.get(row).side(), CRACKS, row, "side");
    }
  }

  private void add(Object value, String rows, int row, String name) {
    if (value == null) {
      paths.add(path + rows + "[" + row + "]." + name);
    }
  }
}
