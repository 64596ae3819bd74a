package hornbook.report.words;

import hornbook.assessment.Limb;
import hornbook.assessment.field.Field;
import hornbook.assessment.field.Fields;
import hornbook.assessment.tree.FieldPath;

/** Names paths of the assessment in trade words. */
public final class FieldNames {
  private FieldNames() {}

  /**
   * {@code digital pulse}, {@code crack 2: bleeds}, {@code stretch 1 of the wall: thickness}; for
   * another foot than the one in hand {@code toe angle, right fore}. An unknown path stands as it
   * is.
   */
  public static String of(String path) {
    FieldPath parsed = FieldPath.parse(path);
    Field field = parsed == null ? null : Fields.at(parsed);
    if (field == null) {
      return path;
    }
    String row = "";
    String foot = "";
    String list = "";
    for (FieldPath.Step step : parsed.steps()) {
      if (step instanceof FieldPath.Name name) {
        list = name.key();
      } else if (step instanceof FieldPath.Index index && !list.equals("feet")) {
        row = row(list, index.number() + 1);
      } else if (step instanceof FieldPath.OfLimb of) {
        foot = ", " + of(of.limb());
      }
    }
    return row + field.label() + foot;
  }

  public static String of(Limb limb) {
    return PlainWords.of(limb.word());
  }

  /** How to look at or measure what the path names, or an empty text. */
  public static String how(String path) {
    Field field = Fields.at(path);
    return field == null ? "" : field.how();
  }

  private static String row(String list, int number) {
    return switch (list) {
      case "cracks" -> "crack " + number + ": ";
      case "wall" -> "stretch " + number + " of the wall: ";
      default -> list + " " + number + ": ";
    };
  }
}
