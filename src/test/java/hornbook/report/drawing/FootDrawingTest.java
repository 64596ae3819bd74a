package hornbook.report.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornbook.advice.Advice;
import hornbook.report.Pages;
import hornbook.report.words.Detail;
import hornbook.report.words.PageContext;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class FootDrawingTest {
  private static FootMap map(Advice advice) {
    return FootMap.of(advice, advice.feet().get(0));
  }

  private static List<MatchResult> found(String svg, String pattern) {
    return Pattern.compile(pattern).matcher(svg).results().toList();
  }

  @Test
  void draws_every_piece_with_its_number_and_every_nail() throws Exception {
    FootMap map = map(Pages.advice("torn-toe"));
    String svg = FootDrawing.svg(map, "one");
    assertThat(found(svg, "class=\"number\"")).hasSize(4);
    assertThat(found(svg, "<polyline class=\"missing\"")).hasSize(2);
    assertThat(found(svg, "<polyline class=\"sound\"")).hasSize(2);
    assertThat(found(svg, "<polygon "))
        .hasSize((int) (map.nails().medial().count().low() + map.nails().lateral().count().low()));
    assertThat(
            new WallLegend(
                    map,
                    PageContext.of(
                            Pages.advice("torn-toe"),
                            hornbook.assessment.quantity.Units.MM,
                            Detail.FULL)
                        .phrases()
                        .amounts())
                .pieces())
        .hasSize(4)
        .first()
        .isEqualTo(
            "inner side, 0 to 40 mm back from the middle of the toe: broken away, 24 mm high, dry");
  }

  @Test
  void keeps_within_its_frame_at_the_size_of_the_foot() {
    for (Map.Entry<String, Advice> one : Pages.all().entrySet()) {
      FootMap map = map(one.getValue());
      String svg = FootDrawing.svg(map, "one");
      if (map.outline() == null) {
        assertThat(svg).isEmpty();
        continue;
      }
      double[] frame = numbers(found(svg, "viewBox=\"([^\"]+)\"").get(0).group(1));
      double widest = 0;
      for (MatchResult line : found(svg, "<poly[a-z]+ [^>]*points=\"([^\"]+)\"")) {
        double[] points = numbers(line.group(1));
        for (int i = 0; i < points.length; i += 2) {
          assertThat(points[i]).as(one.getKey()).isBetween(frame[0], frame[0] + frame[2]);
          assertThat(points[i + 1]).isBetween(frame[1], frame[1] + frame[3]);
          widest = line.group().contains("polygon") ? widest : Math.max(widest, points[i]);
        }
      }
      assertThat(widest).as(one.getKey()).isCloseTo(map.outline().width() / 2, within(1.5));
    }
  }

  private static double[] numbers(String text) {
    return Pattern.compile("[ ,]+").splitAsStream(text).mapToDouble(Double::parseDouble).toArray();
  }

  @Test
  void the_inner_side_lies_toward_the_other_foot() throws Exception {
    String left = FootDrawing.svg(map(Pages.advice("torn-toe")), "one");
    Advice mirrored =
        Pages.read(
            "format: hornbook-assessment/1\nfeet: [{limb: right-fore, measures: {bearingLength: 128"
                + " mm, width: 124 mm}}]\n");
    String right = FootDrawing.svg(map(mirrored), "one");
    assertThat(innerWord(left)).isPositive();
    assertThat(innerWord(right)).isNegative();
  }

  private static double innerWord(String svg) {
    return Double.parseDouble(found(svg, "x=\"([^\"]+)\"[^>]*>inner<").get(0).group(1));
  }
}
