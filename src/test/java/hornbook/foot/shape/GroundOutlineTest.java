package hornbook.foot.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import hornbook.foot.Trade;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.linearref.LengthIndexedLine;

/** The outline against a geometry library, on a fine chain of points drawn without arc lengths. */
class GroundOutlineTest {
  private static final GeometryFactory GEOMETRY = new GeometryFactory();
  private static final int POINTS = 4000;

  @Property(tries = 100)
  void lengthAndPlacesAgreeWithAGeometryLibrary(
      @ForAll @DoubleRange(min = 80, max = 180) double bearing,
      @ForAll @DoubleRange(min = 70, max = 180) double width,
      @ForAll @DoubleRange(min = 0.3, max = 0.8) double widest,
      @ForAll @DoubleRange(min = 0, max = 1) double share) {
    GroundOutline outline = Trade.outline(bearing, width, widest * bearing);
    LineString side = side(outline);
    assertThat(outline.edgeLength()).isCloseTo(side.getLength(), within(1e-3));
    double distance = share * outline.edgeLength();
    Coordinate there = new LengthIndexedLine(side).extractPoint(distance);
    EdgePoint at = outline.at(distance);
    assertThat(at.back()).isCloseTo(there.x, within(5e-3));
    assertThat(at.out()).isCloseTo(there.y, within(5e-3));
    assertThat(outline.edgeAt(at.back())).isCloseTo(distance, within(1e-6));
  }

  /** Where the foot is as wide as it is long and widest in the middle its front is a circle. */
  @Test
  void aRoundFrontIsAQuarterCircle() {
    GroundOutline outline = Trade.outline(120, 120, 60);
    assertThat(outline.edgeToWidest()).isCloseTo(Math.PI * 60 / 2, within(1e-9));
    assertThat(outline.at(outline.edgeToWidest() / 3).out()).isCloseTo(30, within(1e-9));
  }

  @Test
  void passesThroughWhatWasMeasured() {
    GroundOutline outline = Trade.outline(130, 124, 62);
    assertThat(outline.at(0)).isEqualTo(new EdgePoint(0, 0));
    assertThat(outline.halfWidthAt(62)).isCloseTo(62, within(1e-9));
    assertThat(outline.edgeAt(62)).isCloseTo(outline.edgeToWidest(), within(1e-9));
    EdgePoint buttress = outline.at(outline.edgeLength());
    assertThat(buttress.back()).isCloseTo(130, within(1e-9));
    assertThat(2 * buttress.out()).isCloseTo(outline.heelWidth(), within(1e-9));
    assertThat(outline.heelWidth()).isCloseTo(124 * 2.0 / 3, within(1e-9));
  }

  /** Fore feet are widest near the middle, hind feet two thirds back (usda-1916). */
  @Test
  void anUnmeasuredWidestPartIsAssumedByLimbAndFlagged() {
    GroundOutline fore = GroundOutline.of(Trade.ground(120.0, 118.0, null), true, Trade.SHAPE);
    GroundOutline hind = GroundOutline.of(Trade.ground(120.0, 118.0, null), false, Trade.SHAPE);
    assertThat(fore.toeToWidest()).isEqualTo(60);
    assertThat(hind.toeToWidest()).isCloseTo(80, within(1e-9));
    assertThat(fore.widestAssumed()).isTrue();
    assertThat(Trade.outline(120, 118, 60).widestAssumed()).isFalse();
    assertThat(hind.halfWidthAt(30)).as("pointed").isLessThan(fore.halfWidthAt(30));
  }

  @Test
  void noOutlineWithoutWidthOrLengthOrOfAnImpossibleFoot() {
    assertThat(GroundOutline.of(Trade.ground(null, 118.0, 60.0), true, Trade.SHAPE)).isNull();
    assertThat(GroundOutline.of(Trade.ground(120.0, null, 60.0), true, Trade.SHAPE)).isNull();
    assertThat(GroundOutline.of(Trade.ground(120.0, 118.0, 120.0), true, Trade.SHAPE)).isNull();
    assertThat(GroundOutline.of(Trade.ground(120.0, 0.0, 60.0), true, Trade.SHAPE)).isNull();
    assertThat(GroundOutline.of(Trade.ground(120.0, 118.0, 0.0), true, Trade.SHAPE)).isNull();
    double endless = Double.POSITIVE_INFINITY;
    assertThat(GroundOutline.of(Trade.ground(120.0, endless, 60.0), true, Trade.SHAPE)).isNull();
    assertThat(GroundOutline.of(Trade.ground(endless, 118.0, 60.0), true, Trade.SHAPE)).isNull();
  }

  @Test
  void theMiddleOfTheToeIsWhereTheEdgeBegins() {
    GroundOutline outline = Trade.outline(130, 124, 62);
    assertThat(outline.edgeAt(0)).isZero();
    assertThat(outline.at(0)).isEqualTo(new EdgePoint(0, 0));
    assertThat(outline.halfWidthAt(0)).isZero();
    assertThat(outline.width()).isEqualTo(124);
  }

  @Test
  void placesOffTheEdgeAreRefused() {
    GroundOutline outline = Trade.outline(130, 124, 62);
    double beyond = outline.edgeLength() + 1;
    assertThatIllegalArgumentException().isThrownBy(() -> outline.at(beyond));
    assertThatIllegalArgumentException().isThrownBy(() -> outline.at(-1));
    assertThatIllegalArgumentException().isThrownBy(() -> outline.edgeAt(131));
    assertThatIllegalArgumentException().isThrownBy(() -> outline.halfWidthAt(-1));
    assertThatIllegalArgumentException().isThrownBy(() -> new OutlineShape(0.5, 0.6, 1));
  }

  /** Points crowd together at the toe, where the edge turns. */
  private static LineString side(GroundOutline outline) {
    Coordinate[] points = new Coordinate[POINTS + 1];
    for (int i = 0; i <= POINTS; i++) {
      double share = (double) i / POINTS;
      double back = outline.bearingLength() * Math.pow(share, 2.5);
      points[i] = new Coordinate(back, outline.halfWidthAt(back));
    }
    return GEOMETRY.createLineString(points);
  }
}
