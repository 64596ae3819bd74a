package hornbook.report.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornbook.foot.shape.AddedMaterial;
import hornbook.foot.shape.SideProfile;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.apache.commons.geometry.euclidean.twod.Line;
import org.apache.commons.geometry.euclidean.twod.Lines;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.apache.commons.numbers.core.Precision;
import org.junit.jupiter.api.Test;

/**
 * Corners are found by moving points; lengths and angles of the finished foot by the sine rule in
 * another class. Both have to come out alike, measured with Commons Geometry.
 */
class SideShapeTest {
  private static final double MM = 1e-6;
  private static final Precision.DoubleEquivalence SAME =
      Precision.doubleEquivalenceOfEpsilon(1e-9);

  private static SideProfile foot(double toe, double heel, double angle, double bearing) {
    return new SideProfile(toe, heel, angle, angle - 4, angle + 2, bearing, bearing / 2, 0);
  }

  private static Vector2D of(DrawnPoint point) {
    return Vector2D.of(point.x(), point.y());
  }

  private static double angle(DrawnPoint from, DrawnPoint to) {
    return Math.toDegrees(Vector2D.Unit.PLUS_X.angle(of(from).vectorTo(of(to)).normalize()));
  }

  @Property
  void corners_keep_the_lengths_and_angles_of_the_finished_foot(
      @ForAll @DoubleRange(min = 60, max = 120) double toeLength,
      @ForAll @DoubleRange(min = 40, max = 65) double angle,
      @ForAll @DoubleRange(min = 100, max = 170) double bearing,
      @ForAll @DoubleRange(min = -5, max = 20) double toeDepth,
      @ForAll @DoubleRange(min = -5, max = 20) double heelDepth,
      @ForAll @DoubleRange(min = 0, max = 12) double front) {
    SideProfile before = foot(toeLength, toeLength / 3, angle, bearing);
    AddedMaterial build =
        AddedMaterial.depth(toeDepth, heelDepth).withFront(front).withBehind(5).withSetBack(9);
    SideProfile after = before.with(build);
    SideShape shape = SideShape.of(before, build);

    assertThat(of(shape.toe()).distance(of(shape.coronetToe())))
        .isCloseTo(after.toeLength(), within(MM));
    assertThat(angle(shape.toe(), shape.coronetToe())).isCloseTo(after.toeAngle(), within(MM));
    assertThat(angle(shape.oldHeel(), shape.coronetHeel()))
        .isCloseTo(after.heelAngle(), within(MM));
    assertThat(of(shape.oldHeel()).distance(of(shape.coronetHeel())))
        .isCloseTo(before.heelLength(), within(MM));
    assertThat(of(shape.foremost()).distance(of(shape.rearmost())))
        .isCloseTo(after.bearingLength(), within(MM));
    assertThat(of(shape.breakover()).distance(of(shape.middle())))
        .isCloseTo(Math.abs(after.breakover()), within(MM));
    for (DrawnPoint ground : new DrawnPoint[] {shape.toe(), shape.heel(), shape.foremost()}) {
      assertThat(ground.y()).isCloseTo(0, within(MM));
    }
  }

  @Property
  void what_is_laid_on_in_front_is_as_thick_square_to_the_wall(
      @ForAll @DoubleRange(min = 40, max = 65) double angle,
      @ForAll @DoubleRange(min = 1, max = 12) double front) {
    SideShape shape =
        SideShape.of(foot(90, 30, angle, 130), AddedMaterial.NOTHING.withFront(front));
    Line wall = Lines.fromPoints(of(shape.toe()), of(shape.coronetToe()), SAME);
    assertThat(wall.distance(of(shape.foremost()))).isCloseTo(front, within(MM));
  }

  @Test
  void ten_millimetres_of_depth_are_ten_millimetres_along_the_wall() {
    SideShape shape = SideShape.of(foot(90, 30, 50, 130), AddedMaterial.depth(10, 10));
    assertThat(shape.toe().distance(shape.oldToe())).isCloseTo(10, within(MM));
    assertThat(shape.heel().distance(shape.oldHeel())).isCloseTo(10, within(MM));
    assertThat(shape.oldToe().y()).isCloseTo(10 * Math.sin(Math.toRadians(50)), within(MM));
  }

  @Test
  void what_is_not_known_has_no_place() {
    SideProfile bare = new SideProfile(90, Double.NaN, 50, Double.NaN, 52, 130, Double.NaN, 0);
    SideShape shape = SideShape.of(bare, AddedMaterial.NOTHING);
    assertThat(shape.coronetToe().known()).isTrue();
    assertThat(shape.coronetHeel().known()).isFalse();
    assertThat(shape.middle().known()).isFalse();
  }
}
