package hornbook.study.confidence;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.advice.FootAdvice;
import hornbook.advice.engine.OutcomeCache;
import hornbook.advice.outcome.Outcome;
import hornbook.assessment.Assessment;
import hornbook.assessment.form.BlankAssessment;
import hornbook.assessment.quantity.Units;
import hornbook.assessment.read.AssessmentReader;
import hornbook.rules.Shipped;
import hornbook.study.Given;
import hornbook.study.measure.Measurement;
import hornbook.study.measure.Measurements;
import hornbook.study.measure.MeasuringErrors;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What is drawn is a horse that could be, and is judged as the engine judges it. */
class MeasurementSimulationTest {
  private static final int DRAWS = 12;

  static List<Path> exercises() throws Exception {
    return Shipped.files(Shipped.EXERCISES);
  }

  @ParameterizedTest
  @MethodSource("exercises")
  void every_draw_is_a_valid_assessment_and_its_standing_is_that_of_the_advice(Path file) {
    Assessment noted = Given.read(file).assessment();
    OutcomeCache standings = new OutcomeCache(Shipped.ADVISOR);
    for (int foot = 0; foot < noted.feet().size(); foot++) {
      FootAdvice advice = Shipped.ADVISOR.advise(noted).feet().get(foot);
      var limits = advice.sheet().limits();
      List<Measurement> measured = Measurements.of(noted, limits);
      MeasurementSimulation remeasuring =
          new MeasurementSimulation(noted, measured, MeasuringErrors.of(limits));
      for (int run = 0; run < DRAWS; run++) {
        Assessment drawn = remeasuring.with(remeasuring.draw(1, run));
        assertThat(measured.isEmpty() || !drawn.equals(noted)).as("something drawn anew").isTrue();
        String written = BlankAssessment.write(drawn, Units.MM, null);
        Given.good(
            AssessmentReader.read(
                written.getBytes(StandardCharsets.UTF_8), "draw " + run, List.of()));
        FootAdvice direct = Shipped.ADVISOR.advise(drawn).feet().get(foot);
        assertThat(standings.of(drawn, foot)).isEqualTo(Outcome.of(direct));
      }
    }
  }
}
