package hornbook.report.drawing;

import hornbook.advice.Advice;
import hornbook.advice.FootAdvice;
import hornbook.assessment.quantity.Units;
import hornbook.assessment.read.AssessmentReader;
import hornbook.assessment.read.ReadResult;
import hornbook.plan.Plan;
import hornbook.plan.PlanMaker;
import hornbook.plan.sheet.PlanWishes;
import hornbook.plan.sheet.Technique;
import hornbook.report.words.Amounts;
import hornbook.rules.Shipped;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Feet to draw. */
final class Feet {
  static final Amounts MM = new Amounts(Units.MM);

  /** A fore foot of which everything that is drawn was measured. */
  static final String WHOLE =
      """
      format: hornbook-assessment/1
      horse: {name: Tansy, ageYears: 8, weight: 500 kg, work: light}
      visit: {date: 2026-03-14}
      feet:
        - limb: left-fore
          lameness: 0
          shoeing: nailed
          measures: {toeLength: 90 mm, heelLength: 30 mm, toeAngle: 50 deg, heelAngle: 46 deg,
            pasternAngle: 52 deg, bearingLength: 130 mm, width: 124 mm, toeToWidest: 62 mm}
          wall:
            - {side: medial, from: 0 mm, to: 170 mm, state: sound, thickness: 9 mm}
            - {side: lateral, from: 0 mm, to: 100 mm, state: sound, thickness: 9 mm}
            - {side: lateral, from: 100 mm, to: 130 mm, state: broken-away, height: 25 mm}
            - {side: lateral, from: 130 mm, to: 170 mm, state: sound, thickness: 9 mm}
          cracks: []
          signs: {digitalPulse: normal, hoofHeat: false, testerPain: [], drainage: none,
            puncture: none, objectInPlace: false, livingTissue: hidden, coronetGroove: false,
            soleBulge: false, swelling: none, frogState: healthy}
      """;

  private Feet() {}

  static Advice advice(String yaml) {
    byte[] bytes = yaml.getBytes(StandardCharsets.UTF_8);
    if (AssessmentReader.read(bytes, "a file", List.of()) instanceof ReadResult.Good good) {
      return Shipped.ADVISOR.advise(good.assessment());
    }
    throw new IllegalArgumentException(yaml);
  }

  /** By file, the advice on every exercise. */
  static Map<String, Advice> exercises() throws Exception {
    Map<String, Advice> all = new LinkedHashMap<>();
    for (Path file : Shipped.files(Shipped.EXERCISES)) {
      all.put(file.getFileName().toString(), advice(Files.readString(file)));
    }
    return all;
  }

  /** The sheet for the first foot, whatever the advice says to it. */
  static Plan plan(Advice advice, Technique technique, Double add) {
    return plan(advice, advice.feet().get(0), technique, add, null);
  }

  static Plan plan(Advice advice, FootAdvice foot, Technique technique, Double add, Double wedge) {
    List<String> supports = wedge == null ? List.of() : List.of("heel-wedge");
    return PlanMaker.plan(
        advice, foot, technique, new PlanWishes(null, null, add, null, wedge, supports, "drawn"));
  }

  static Drawing drawing(List<Drawing> drawings, Picture picture) {
    return drawings.stream()
        .filter(one -> one.picture() == picture)
        .reduce((first, last) -> last)
        .orElseThrow();
  }
}
