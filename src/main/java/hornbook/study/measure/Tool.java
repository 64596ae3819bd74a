package hornbook.study.measure;

import static hornbook.study.measure.Graduation.SIXTEENTH;

import hornbook.assessment.quantity.Dimension;
import hornbook.assessment.quantity.Unit;
import hornbook.assessment.quantity.Units;

/** What the numbers of an assessment are measured with; measures by one tool err alike in part. */
public enum Tool {
  RULE("rule or callipers", Unit.MM, 1, Unit.INCH, SIXTEENTH),
  EDGE_TAPE("tape along the edge", Unit.MM, 1, Unit.INCH, SIXTEENTH),
  WALL_CALLIPERS("callipers on the wall", Unit.MM, 1, Unit.INCH, SIXTEENTH),
  ANGLE_GAUGE("angle gauge", Unit.DEGREE, 0.5, Unit.DEGREE, 0.5),
  HAIRLINE_TAPE("tape round the coronary band", Unit.MM, 1, Unit.INCH, SIXTEENTH),
  IMAGES("the vet's radiographs", Unit.MM, 1, Unit.INCH, SIXTEENTH),
  BODY_TAPE("tape round the body", Unit.CM, 1, Unit.INCH, 0.5),
  WEIGHBRIDGE("weighbridge", Unit.KILOGRAM, 5, Unit.POUND, 10),
  CLINICAL_THERMOMETER("clinical thermometer", Unit.CELSIUS, 0.1, Unit.FAHRENHEIT, 0.1),
  AIR_THERMOMETER("air thermometer", Unit.CELSIUS, 1, Unit.FAHRENHEIT, 1);

  private final String label;
  private final Graduation metric;
  private final Graduation imperial;

  Tool(String label, Unit metric, double apart, Unit imperial, double apartInThose) {
    this.label = label;
    this.metric = new Graduation(metric, apart);
    this.imperial = new Graduation(imperial, apartInThose);
  }

  /** The marks it is read by for what is measured in this dimension. */
  public Graduation marks(Dimension dimension, Units units) {
    if (dimension == Dimension.ANGLE) {
      return ANGLE_GAUGE.metric;
    }
    return units == Units.MM ? metric : imperial;
  }

  public String label() {
    return label;
  }
}
