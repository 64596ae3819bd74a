package hornbook.report.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornbook.advice.Advice;
import hornbook.advice.FootAdvice;
import hornbook.assessment.quantity.Units;
import hornbook.foot.GrowingOut;
import hornbook.foot.GrowthRates;
import hornbook.plan.Plan;
import hornbook.plan.sheet.PlannedNail;
import hornbook.plan.sheet.Technique;
import hornbook.report.sheet.PlanText;
import hornbook.report.words.HorseAndDay;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;

/** The drawings read back: one unit is a millimetre of this foot. */
class DrawingsTest {
  /** Places in a drawing are written to a hundredth. */
  private static final double WRITTEN = 0.02;

  private static Seen drawn(List<Drawing> drawings, Picture picture) throws Exception {
    return new Seen(Feet.drawing(drawings, picture).svg());
  }

  private static Seen asMeasured(Picture picture) throws Exception {
    Advice advice = Feet.advice(Feet.WHOLE);
    return drawn(Drawings.of(advice, advice.feet().get(0), Feet.MM), picture);
  }

  private static Plan wrapped(double add) {
    return Feet.plan(Feet.advice(Feet.WHOLE), Technique.CAST_WRAP, add);
  }

  @Test
  void ten_millimetres_of_depth_are_ten_millimetres_from_the_side() throws Exception {
    Seen side = drawn(Drawings.of(wrapped(10), Feet.MM), Picture.SIDE);
    List<Vector2D> under = side.filled(Fill.ADDED).get(0);
    assertThat(under).hasSize(4);
    assertThat(under.get(0).distance(under.get(3))).isCloseTo(10, within(WRITTEN));
    assertThat(under.get(1).distance(under.get(2))).isCloseTo(10, within(WRITTEN));
    assertThat(under.get(0).distance(under.get(1))).isCloseTo(130, within(WRITTEN));
    assertThat(side.words()).contains("+10 mm", "toe 100 mm", "heel 40 mm", "50°", "pastern 52°");
    List<Vector2D> inFront = side.filled(Fill.ADDED).get(1);
    assertThat(inFront.get(0).distance(inFront.get(3)))
        .as("four millimetres of tape on the wall, seen along the ground")
        .isCloseTo(4 / Math.sin(Math.toRadians(50)), within(WRITTEN));
  }

  @Test
  void from_the_side_walls_and_ground_have_the_lengths_measured() throws Exception {
    Seen side = asMeasured(Picture.SIDE);
    List<Double> heavy =
        side.lines(Pen.HEAVY).stream()
            .map(line -> line.get(0).distance(line.get(line.size() - 1)))
            .toList();
    assertThat(heavy).anySatisfy(length -> assertThat(length).isCloseTo(90, within(WRITTEN)));
    assertThat(heavy).anySatisfy(length -> assertThat(length).isCloseTo(30, within(WRITTEN)));
    assertThat(heavy)
        .as("the bar to measure by")
        .anySatisfy(length -> assertThat(length).isCloseTo(50, within(WRITTEN)));
  }

  @Test
  void a_wedge_turns_the_foot_by_its_angle_and_is_drawn_at_the_heel_alone() throws Exception {
    Advice advice = Feet.advice(Feet.WHOLE);
    Plan plan = Feet.plan(advice, advice.feet().get(0), Technique.NAIL_ON, null, 3.0);
    Seen side = drawn(Drawings.of(plan, Feet.MM), Picture.SIDE);
    List<Vector2D> wedge = side.filled(Fill.ADDED).get(0);
    Vector2D toe = wedge.get(0);
    double turned = Math.toDegrees(toe.vectorTo(wedge.get(1)).angle(toe.vectorTo(wedge.get(2))));
    assertThat(turned).isCloseTo(3, within(0.02));
    assertThat(toe.distance(wedge.get(3))).isCloseTo(0, within(WRITTEN));
    assertThat(side.words()).contains("53°");
  }

  @Test
  void on_the_unrolled_wall_a_loss_is_as_long_and_as_high_as_measured() throws Exception {
    Seen wall = asMeasured(Picture.WALL);
    List<List<Vector2D>> lost = wall.filled(Fill.CROSS);
    assertThat(lost).as("at the edge, and above it").hasSize(2);
    List<Vector2D> above = lost.get(1);
    assertThat(above.get(0)).isEqualTo(Vector2D.of(100, 0));
    assertThat(above.get(2)).isEqualTo(Vector2D.of(130, 25));
    assertThat(wall.words()).contains("25 mm");
    List<List<Vector2D>> band =
        wall.lines(Pen.HEAVY).stream().filter(line -> line.size() > 2).toList();
    assertThat(band).hasSize(2);
    for (List<Vector2D> side : band) {
      assertThat(side.get(0)).isEqualTo(Vector2D.of(0, 90));
      assertThat(side.get(side.size() - 1).getY()).isCloseTo(30, within(WRITTEN));
    }
  }

  @Test
  void the_clearance_line_lies_below_the_coronary_band_by_the_limit() throws Exception {
    Seen wall = asMeasured(Picture.WALL);
    double clear =
        Feet.advice(Feet.WHOLE).feet().get(0).sheet().limits().get("hairline.most").value();
    List<Vector2D> band = wall.lines(Pen.HEAVY).get(0);
    List<Vector2D> line = wall.lines(Pen.DASHED).get(0);
    assertThat(line).hasSameSizeAs(band);
    for (int i = 0; i < line.size(); i++) {
      assertThat(band.get(i).subtract(line.get(i)).getY()).isCloseTo(clear, within(WRITTEN));
    }
  }

  @Test
  void each_nail_of_the_sheet_leaves_the_unrolled_wall_where_its_table_says() throws Exception {
    Plan plan = Feet.plan(Feet.advice(Feet.WHOLE), Technique.NAIL_ON_ADAPTED, null);
    Seen wall = drawn(Drawings.of(plan, Feet.MM), Picture.WALL);
    assertThat(plan.nails()).isNotEmpty();
    List<Element> dots = wall.all("circle");
    assertThat(dots).hasSameSizeAs(plan.nails());
    for (int i = 0; i < dots.size(); i++) {
      PlannedNail nail = plan.nails().get(i);
      assertThat(Math.abs(Double.parseDouble(dots.get(i).getAttribute("cx"))))
          .isCloseTo(nail.at().value(), within(WRITTEN));
      assertThat(-Double.parseDouble(dots.get(i).getAttribute("cy")))
          .isCloseTo(nail.exit().value(), within(WRITTEN));
    }
    Seen ground = drawn(Drawings.of(plan, Feet.MM), Picture.GROUND);
    assertThat(ground.all("polygon")).hasSameSizeAs(plan.nails());
  }

  @Test
  void a_wrap_covers_all_round_up_to_the_clearance() throws Exception {
    Seen wall = drawn(Drawings.of(wrapped(8), Feet.MM), Picture.WALL);
    List<List<Vector2D>> covered = wall.filled(Fill.COVERED);
    assertThat(covered).hasSize(2);
    for (List<Vector2D> side : covered) {
      assertThat(side.stream().mapToDouble(Vector2D::getY).max().orElse(0))
          .isCloseTo(80, within(WRITTEN));
      assertThat(side.stream().mapToDouble(one -> Math.abs(one.getX())).max().orElse(0))
          .isCloseTo(170, within(WRITTEN));
    }
  }

  @Test
  void nails_alone_cover_nothing_and_a_rebuilt_wall_covers_the_loss_and_its_laps()
      throws Exception {
    Advice advice = Feet.advice(Feet.WHOLE);
    Plan nailed = Feet.plan(advice, Technique.NAIL_ON_ADAPTED, null);
    assertThat(drawn(Drawings.of(nailed, Feet.MM), Picture.WALL).filled(Fill.COVERED)).isEmpty();
    Plan rebuilt = Feet.plan(advice, Technique.PROSTHETIC_WALL, null);
    double lap = advice.feet().get(0).sheet().limits().get("lap").value();
    List<Vector2D> covered =
        drawn(Drawings.of(rebuilt, Feet.MM), Picture.WALL).filled(Fill.COVERED).get(0);
    assertThat(covered.get(0).getX()).isCloseTo(100 - lap, within(WRITTEN));
    assertThat(covered.stream().mapToDouble(Vector2D::getY).max().orElse(0))
        .isCloseTo(25, within(WRITTEN));
  }

  @Test
  void the_calendar_ends_each_wedge_on_the_days_of_the_sheet() throws Exception {
    Plan plan = Feet.plan(Feet.advice(Feet.WHOLE), Technique.NAIL_ON_ADAPTED, null);
    Drawing calendar = Feet.drawing(Drawings.of(plan, Feet.MM), Picture.GROWTH);
    List<Vector2D> wedge = new Seen(calendar.svg()).filled(Fill.CROSS).get(0);
    double width = wedge.get(2).getX();
    double fast = plan.ground().fast().value();
    double slow = plan.ground().slow().value();
    assertThat(wedge.get(1).getX() / width).isCloseTo(fast / slow, within(0.01));
    LocalDate visit = LocalDate.of(2026, 3, 14);
    LocalDate first = plan.ground().on(plan.ground().fast());
    assertThat(ChronoUnit.DAYS.between(visit, first)).isEqualTo((long) fast);
    String desc = new Seen(calendar.svg()).all("desc").get(0).getTextContent();
    assertThat(desc).contains("3, outer side, 25 mm high: grown out between");
    assertThat(desc).contains(HorseAndDay.spoken(first));
    assertThat(desc).contains(HorseAndDay.spoken(plan.ground().on(plan.ground().slow())));
  }

  /** A crack from the coronary band has grown out with the wall it is in, on the sheet's days. */
  @Test
  void a_crack_from_the_coronary_band_is_on_the_calendar_with_the_days_of_the_sheet()
      throws Exception {
    String cracked =
        Feet.WHOLE.replace(
            "cracks: []",
            "cracks: [{place: toe, starts: full, bleeds: false, moves: false}, {place: quarter,"
                + " side: lateral, starts: coronet}, {place: side, side: medial, starts: ground},"
                + " {place: bar, side: medial, starts: coronet}]");
    Advice advice = Feet.advice(cracked);
    Plan plan = Feet.plan(advice, Technique.NAIL_ON_ADAPTED, null);
    Drawing calendar = Feet.drawing(Drawings.of(plan, Feet.MM), Picture.GROWTH);
    Seen seen = new Seen(calendar.svg());
    List<List<Vector2D>> wedges = seen.filled(Fill.DOTS);
    assertThat(wedges).hasSize(2);
    List<Vector2D> toe = wedges.get(0);
    double up = toe.get(0).getY() / 90;
    assertThat(seen.words()).contains("crack 1: 90 mm");
    GrowthRates rates =
        new GrowthRates(
            plan.foot().sheet().limits().get("growth.slow").value(),
            plan.foot().sheet().limits().get("growth.mean").value(),
            plan.foot().sheet().limits().get("growth.fast").value());
    assertThat(toe.get(1).getX() / toe.get(2).getX())
        .isCloseTo(rates.slow() / rates.fast(), within(0.001));
    String desc = seen.all("desc").get(0).getTextContent();
    String sheet = PlanText.render(plan, Units.MM).replaceAll("\\s+", " ");
    for (List<Vector2D> wedge : wedges) {
      GrowingOut out = GrowingOut.of(wedge.get(0).getY() / up, 0, rates);
      for (double days : new double[] {out.fast(), out.slow()}) {
        String day = HorseAndDay.spoken(GrowingOut.date(LocalDate.of(2026, 3, 14), days));
        assertThat(desc).contains(day);
        assertThat(sheet).contains(day);
      }
    }
    assertThat(calendar.leftOut())
        .hasSize(2)
        .anyMatch(line -> line.startsWith("Crack 3 is not drawn: it starts at the ground"))
        .anyMatch(line -> line.startsWith("Crack 4 is not drawn: it is in the bar"));
  }

  @Test
  void seen_from_above_the_inner_side_lies_toward_the_other_foot_and_in_front_the_other_way()
      throws Exception {
    for (String limb : List.of("left-fore", "right-fore", "left-hind", "right-hind")) {
      Advice advice = Feet.advice(Feet.WHOLE.replace("left-fore", limb));
      List<Drawing> drawings = Drawings.of(advice, advice.feet().get(0), Feet.MM);
      boolean left = limb.startsWith("left");
      assertThat(x(drawn(drawings, Picture.GROUND), "inner") > 0).as(limb).isEqualTo(left);
      assertThat(x(drawn(drawings, Picture.WALL), "inner heel") < 0).as(limb).isEqualTo(left);
    }
  }

  private static double x(Seen drawing, String words) {
    return drawing.all("text").stream()
        .filter(one -> one.getTextContent().equals(words))
        .mapToDouble(one -> Double.parseDouble(one.getAttribute("x")))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void seen_from_above_the_edge_is_as_wide_as_the_foot() throws Exception {
    double widest =
        asMeasured(Picture.GROUND).all("polyline").stream()
            .flatMap(line -> Seen.points(line).stream())
            .mapToDouble(Vector2D::getX)
            .max()
            .orElse(0);
    assertThat(widest).isCloseTo(62, within(0.1));
  }

  @Test
  void every_drawing_of_every_exercise_keeps_within_its_frame_and_is_described() throws Exception {
    for (var one : Feet.exercises().entrySet()) {
      for (FootAdvice foot : one.getValue().feet()) {
        for (Drawing drawing : Drawings.of(one.getValue(), foot, Feet.MM)) {
          whole(one.getKey(), drawing);
        }
        for (Technique technique : Technique.values()) {
          Plan plan = Feet.plan(one.getValue(), foot, technique, null, null);
          for (Drawing drawing : Drawings.of(plan, Feet.MM)) {
            whole(one.getKey() + " " + technique, drawing);
          }
        }
      }
    }
  }

  private static void whole(String name, Drawing drawing) throws Exception {
    String what = name + " " + drawing.title();
    if (!drawing.drawn()) {
      assertThat(drawing.picture() == Picture.GROWTH || !drawing.leftOut().isEmpty())
          .as(what)
          .isTrue();
      return;
    }
    for (String svg : List.of(drawing.svg(), drawing.alone())) {
      Seen seen = new Seen(svg);
      double[] frame = seen.frame();
      assertThat(svg).as(what).doesNotContain("NaN", "Infinity");
      assertThat(seen.all("title").get(0).getTextContent()).isNotBlank();
      assertThat(seen.all("desc").get(0).getTextContent()).as(what).hasSizeGreaterThan(20);
      for (String element : List.of("polyline", "polygon")) {
        for (Element line : seen.all(element)) {
          for (Vector2D point : Seen.points(line)) {
            assertThat(point.getX()).as(what).isBetween(frame[0], frame[0] + frame[2]);
            assertThat(-point.getY()).as(what).isBetween(frame[1], frame[1] + frame[3]);
          }
        }
      }
    }
  }

  @Test
  void what_was_not_measured_is_left_out_and_said() {
    String yaml = Feet.WHOLE.replace("heelAngle: 46 deg,", "").replace("toeToWidest: 62 mm", "");
    yaml = yaml.replace("width: 124 mm, ", "width: 124 mm").replace(", height: 25 mm", "");
    Advice advice = Feet.advice(yaml);
    List<Drawing> drawings = Drawings.of(advice, advice.feet().get(0), Feet.MM);
    assertThat(Feet.drawing(drawings, Picture.SIDE).leftOut())
        .contains(
            "The heel wall is not drawn; not measured: heel angle.",
            "The coronary band is not drawn: toe or heel wall is not known.",
            "Breakover is not drawn: toe to widest part was not measured.");
    assertThat(Feet.drawing(drawings, Picture.WALL).leftOut())
        .contains("Stretch 3 is drawn at the edge only: its height was not measured.");
    assertThat(Feet.drawing(drawings, Picture.GROWTH).leftOut())
        .containsExactly(
            "Stretch 3 is not drawn: its height was not measured, so when it has grown out is not"
                + " known.");
  }

  @Test
  void an_empty_assessment_is_drawn_as_nothing_and_says_so() {
    Advice advice = Feet.advice("format: hornbook-assessment/1\nfeet: [{limb: left-fore}]\n");
    for (Drawing drawing : Drawings.of(advice, advice.feet().get(0), Feet.MM)) {
      assertThat(drawing.drawn()).isFalse();
      assertThat(drawing.picture() == Picture.GROWTH || !drawing.leftOut().isEmpty()).isTrue();
    }
  }

  @Test
  void a_drawing_alone_carries_its_title_and_key_and_has_the_size_of_the_foot() throws Exception {
    Advice advice = Feet.advice(Feet.WHOLE);
    Drawing side = Feet.drawing(Drawings.of(advice, advice.feet().get(0), Feet.MM), Picture.SIDE);
    Seen alone = new Seen(side.alone());
    String words = String.join(" ", alone.words());
    assertThat(words).contains(side.title()).contains(side.key());
    assertThat(side.alone()).contains("width=\"" + (long) alone.frame()[2] + "mm\"");
  }
}
