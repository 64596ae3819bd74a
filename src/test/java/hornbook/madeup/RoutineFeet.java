package hornbook.madeup;

import java.util.Locale;
import java.util.Random;

/**
 * Feet as they come on a usual round: sound, trimmed late, chipped, flared, with mild thrush, with
 * rings. Every sign was looked at and is in order; the measures vary as those of sound riding
 * horses do.
 */
final class RoutineFeet {
  private static final String[] KINDS = {
    "sound", "late", "chipped", "flared", "thrush", "crumbling", "ringed"
  };

  private RoutineFeet() {}

  record Routine(String kind, boolean shod, String yaml) {}

  static Routine foot(int number) {
    Random random = new Random(7919L * number + 3);
    String kind = KINDS[number % KINDS.length];
    boolean shod = !kind.equals("crumbling") && random.nextBoolean();
    return new Routine(kind, shod, yaml(kind, shod, random));
  }

  private static String yaml(String kind, boolean shod, Random random) {
    boolean fore = random.nextInt(3) > 0;
    int weight = 430 + random.nextInt(120);
    int angle = (fore ? 50 : 52) + random.nextInt(4);
    int bearing = 120 + random.nextInt(14);
    int width = fore ? bearing - 4 + random.nextInt(5) : bearing - 10 + random.nextInt(5);
    int heel = 36 + random.nextInt(6);
    int days = kind.equals("late") ? 56 + random.nextInt(8) : 35 + random.nextInt(10);
    return String.format(
        Locale.ROOT,
        """
        format: hornbook-assessment/1
        horse:
          {ageYears: %d, weight: %d kg, work: %s, tetanusCover: current, bodyTemperature: 37.8 C,
           bodyCondition: 5, laminitisGrade: 0, unwillingToMove: false, shiftsWeight: false,
           colicSigns: false, unwell: false}
        visit:
          {date: 2026-05-04, airTemperature: 14 C, workplace: level-dry, shodDaysAgo: %d, vet: none,
           handling: quiet, askedFor: []}
        feet:
          - limb: %s
            lameness: 0
            onset: none
            lameSinceShod: false
            lameForDays: 0
            shoeing: %s
            lostShoe: false
            deformity: none
            stance: straight
            pasternLine: middle
            landing: flat
            oldShoeWear: even
            brushing: false
            measures:
              {toeLength: %d mm, heelLength: %d mm, toeAngle: %d deg, heelAngle: %d deg,
               pasternAngle: %d deg, bearingLength: %d mm, width: %d mm, toeToWidest: %d mm,
               frogLength: 82 mm, frogWidth: 57 mm, medialHeelHeight: 42 mm,
               lateralHeelHeight: 42 mm, coronetGirth: 365 mm}
            wall:
        %s
            cracks: []
            signs:
              {digitalPulse: normal, hoofHeat: false, testerPain: [], drainage: none,
               puncture: none, objectInPlace: false, livingTissue: hidden, coronetGroove: false,
               soleBulge: false, swelling: none, frogState: %s, abscessesSameSpot: 0,
               whiteLineBulge: false, ringsDiverge: %s, bloodAtNail: false, soleShape: cupped,
               cartilages: soft, stain: none, suddenEase: false}
        """,
        6 + random.nextInt(10),
        weight,
        shod ? "sport" : "rest",
        days,
        fore ? "left-fore" : "left-hind",
        shod ? "nailed" : "unshod",
        2 * heel + random.nextInt(4),
        heel,
        angle,
        angle - random.nextInt(3),
        angle,
        bearing,
        width,
        (int) Math.round(bearing * (fore ? 0.5 : 0.6)),
        wall(kind, random),
        kind.equals("thrush") ? "thrush" : "healthy",
        kind.equals("ringed"));
  }

  private static String wall(String kind, Random random) {
    int at = 60 + random.nextInt(30);
    int chip = 8 + random.nextInt(10);
    String sound = "state: sound, thickness: 9 mm, moist: false}\n";
    String whole = row("medial", 0, 172) + sound;
    return switch (kind) {
      case "chipped" ->
          whole
              + row("lateral", 0, at)
              + sound
              + row("lateral", at, at + chip)
              + "state: broken-away, height: %d mm, moist: false}\n".formatted(3 + at % 4)
              + row("lateral", at + chip, 172)
              + sound;
      case "flared" ->
          whole
              + row("lateral", 0, 105)
              + sound
              + row("lateral", 105, 145)
              + "state: flared, flare: %d mm, thickness: 9 mm, moist: false}\n"
                  .formatted(3 + at % 4)
              + row("lateral", 145, 172)
              + sound;
      case "crumbling" ->
          row("medial", 0, 172)
              + "state: crumbling, height: 6 mm, thickness: 9 mm, moist: false}\n"
              + row("lateral", 0, 172)
              + "state: crumbling, height: 5 mm, thickness: 9 mm, moist: false}\n";
      default -> whole + row("lateral", 0, 172) + sound;
    };
  }

  private static String row(String side, int from, int to) {
    return "      - {side: %s, from: %d mm, to: %d mm, ".formatted(side, from, to);
  }
}
