package hornbook.study.measure;

import hornbook.assessment.field.Amount;
import hornbook.assessment.field.Field;
import hornbook.assessment.quantity.Dimension;
import java.util.Map;

/** Which tool takes which measure, and the limit that tells its error. */
final class Instruments {
  /** A tool and the id of the limit that holds the error of what is measured with it. */
  record Instrument(Tool tool, String error) {}

  private static final Instrument LENGTH = new Instrument(Tool.RULE, "error.length");
  private static final Instrument ANGLE = new Instrument(Tool.ANGLE_GAUGE, "error.angle");
  private static final Instrument EDGE = new Instrument(Tool.EDGE_TAPE, "error.length");
  private static final Instrument BODY = new Instrument(Tool.BODY_TAPE, "error.body-length");

  /** Where the tool is another than the dimension says; by the field's own name. */
  private static final Map<String, Instrument> SPECIAL =
      Map.ofEntries(
          Map.entry("coronetGirth", new Instrument(Tool.HAIRLINE_TAPE, "error.coronet-girth")),
          Map.entry("soleDepth", new Instrument(Tool.IMAGES, "error.length")),
          Map.entry("palmarAngle", new Instrument(Tool.IMAGES, "error.angle")),
          Map.entry("from", EDGE),
          Map.entry("to", EDGE),
          Map.entry("thickness", new Instrument(Tool.WALL_CALLIPERS, "error.thickness")),
          Map.entry("girth", BODY),
          Map.entry("bodyLength", BODY),
          Map.entry("weight", new Instrument(Tool.WEIGHBRIDGE, "error.body-weight")),
          Map.entry(
              "bodyTemperature",
              new Instrument(Tool.CLINICAL_THERMOMETER, "error.body-temperature")),
          Map.entry(
              "airTemperature", new Instrument(Tool.AIR_THERMOMETER, "error.air-temperature")));

  private Instruments() {}

  /**
   * What the field is measured with; null for what is not measured on the horse: words, counts, and
   * what is in the van, whose sizes are known.
   */
  static Instrument of(Field field, String path) {
    if (!(field.kind() instanceof Amount amount) || path.startsWith("kit.")) {
      return null;
    }
    Instrument special = SPECIAL.get(field.name());
    if (special != null) {
      return special;
    }
    return amount.dimension() == Dimension.ANGLE ? ANGLE : LENGTH;
  }
}
