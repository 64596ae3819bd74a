package hornbook.study.marking;

import hornbook.assessment.Limb;

/** The marks for one point on one foot. */
public record PointMarks(Limb limb, MarkedPoint point, double marks, double of) {
  /** The point's id in the formats: {@code left-fore/vet}. */
  public String id() {
    return limb.word() + "/" + point.word();
  }

  /** Whether it won all there was. */
  public boolean won() {
    return marks >= of;
  }
}
