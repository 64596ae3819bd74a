package hornbook.study;

/** What the numbers of an assessment are measured with; measures by one tool err alike in part. */
public enum Tool {
  RULE("rule or callipers"),
  EDGE_TAPE("tape along the edge"),
  WALL_CALLIPERS("callipers on the wall"),
  ANGLE_GAUGE("angle gauge"),
  HAIRLINE_TAPE("tape round the hairline"),
  IMAGES("the vet's images"),
  BODY_TAPE("tape round the body"),
  WEIGHBRIDGE("weighbridge"),
  CLINICAL_THERMOMETER("clinical thermometer"),
  AIR_THERMOMETER("air thermometer");

  private final String label;

  Tool(String label) {
    this.label = label;
  }

  public String label() {
    return label;
  }
}
