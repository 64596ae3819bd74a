package hornbook.foot;

import hornbook.foot.number.Interval;
import java.util.List;

/**
 * The usual toe length by body weight, as a table of bands in order of weight.
 *
 * @throws IllegalArgumentException when bands overlap or stand out of order
 */
public record UsualToeLength(List<Band> bands) {

  /** From and to in kg, both included, and the usual toe length in mm. */
  public record Band(double from, double to, double toeLength) {}

  public UsualToeLength {
    bands = List.copyOf(bands);
    double end = 0;
    for (Band band : bands) {
      if (!(end <= band.from && band.from <= band.to)) {
        throw new IllegalArgumentException("out of order: " + band);
      }
      end = band.to;
    }
  }

  /**
   * The usual length at a weight: that of its band, or anything between those of its neighbours
   * where it falls between two. Unknown below the first band and above the last.
   */
  public Interval at(double kg) {
    for (int i = 0; i < bands.size(); i++) {
      Band band = bands.get(i);
      if (kg < band.from) {
        return i == 0 ? Interval.UNKNOWN : span(bands.get(i - 1).toeLength, band.toeLength);
      }
      if (kg <= band.to) {
        return Interval.of(band.toeLength);
      }
    }
    return Interval.UNKNOWN;
  }

  private static Interval span(double one, double other) {
    return new Interval(Math.min(one, other), Math.max(one, other));
  }
}
