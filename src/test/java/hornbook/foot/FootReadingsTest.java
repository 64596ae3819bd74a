package hornbook.foot;

import static java.util.Map.entry;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hornbook.assessment.Assessment;
import hornbook.assessment.Care;
import hornbook.assessment.Foot;
import hornbook.assessment.Horse;
import hornbook.assessment.Limb;
import hornbook.assessment.Measures;
import hornbook.assessment.Side;
import hornbook.assessment.WallCrack;
import hornbook.assessment.WallState;
import hornbook.assessment.WallStretch;
import hornbook.assessment.word.CrackPlace;
import hornbook.foot.number.Interval;
import hornbook.rulebook.ReadingKind;
import java.lang.reflect.Method;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

class FootReadingsTest {
  private static final List<WallStretch> WALL =
      List.of(
          Trade.stretch(Side.MEDIAL, 0.0, 40.0, WallState.SEPARATED, 38.0, 7.0, false),
          Trade.sound(Side.MEDIAL, 40, 168, 9.0),
          Trade.stretch(Side.LATERAL, 0.0, 30.0, WallState.BROKEN_AWAY, 30.0, null, false),
          Trade.sound(Side.LATERAL, 30, 168, 8.0));

  private static final Measures MEASURES =
      Given.a(
          Measures.class,
          Map.ofEntries(
              entry("toeLength", 96.0),
              entry("heelLength", 30.0),
              entry("toeAngle", 46.0),
              entry("heelAngle", 38.0),
              entry("pasternAngle", 50.0),
              entry("bearingLength", 130.0),
              entry("width", 124.0),
              entry("toeToWidest", 62.0),
              entry("frogLength", 82.0),
              entry("frogWidth", 52.0),
              entry("medialHeelHeight", 41.0),
              entry("lateralHeelHeight", 46.0),
              entry("coronetGirth", 350.0)));

  @Test
  void readsAWholeFoot() {
    FootReadings r = readings(MEASURES, WALL);
    assertThat(r.toeHeelAngleDifference()).isEqualTo(Interval.of(8));
    assertThat(r.toeHeelRatio()).isEqualTo(Interval.of(3.2));
    assertThat(r.hoofPasternDifference()).isEqualTo(Interval.of(-4));
    assertThat(r.widestPartShare().low()).isCloseTo(47.69, within(0.01));
    assertThat(r.toeLengthOverUsual()).isEqualTo(Interval.of(13.5));
    assertThat(r.frogWidthShare().low()).isCloseTo(63.41, within(0.01));
    assertThat(r.heelBulbDifference()).isEqualTo(Interval.of(5));
    assertThat(r.medialOverLateralHeel()).isEqualTo(Interval.of(-5));
    assertThat(r.pairAngleGap()).isEqualTo(Interval.of(5));
    assertThat(r.steeperThanPair()).isEqualTo(Interval.of(-5));
    assertThat(r.oppositeLameness()).isEqualTo(Interval.of(1));
    assertThat(r.oppositeLameDays()).isEqualTo(Interval.UNKNOWN);
    assertThat(r.bodyWeight()).isEqualTo(Interval.of(470));
    assertThat(r.hoofLoadIndex().low()).isCloseTo(68.54, within(0.01));
    assertThat(r.ageDays()).isEqualTo(new Interval(2190, 2554));
  }

  /** 70 of 336 mm of edge defective, the rest sound. */
  @Test
  void readsTheWall() {
    FootReadings r = readings(MEASURES, WALL);
    assertThat(r.soundShare().exact()).isTrue();
    assertThat(r.soundShare().low()).isCloseTo(100 * 266 / 336.0, within(1e-9));
    assertThat(r.soundShareMedial().low()).isCloseTo(100 * 128 / 168.0, within(1e-9));
    assertThat(r.soundShareLateral().low()).isCloseTo(100 * 138 / 168.0, within(1e-9));
    assertThat(r.missingShare().low()).isCloseTo(100 * 30 / 336.0, within(1e-9));
    assertThat(r.separatedShare().low()).isCloseTo(100 * 40 / 336.0, within(1e-9));
    assertThat(r.missingOrSeparatedShare().low()).isCloseTo(100 * 70 / 336.0, within(1e-9));
    assertThat(r.bearingShare().low()).isCloseTo(100 * 266 / 336.0, within(1e-9));
    assertThat(r.bearingPressureRatio().low()).isCloseTo(336 / 266.0, within(1e-9));
    assertThat(r.longestDefect()).isEqualTo(Interval.of(70));
    assertThat(r.tallestDefect()).isEqualTo(Interval.of(38));
    assertThat(r.thinnestSoundWall()).isEqualTo(Interval.of(8));
    assertThat(r.weeksToNailable().low()).isCloseTo(19 / 8.5 * 30.4375 / 7, within(1e-9));
  }

  /** 14 mm in 60 days is 7.1 mm a month; in three weeks an error of a millimetre is too much. */
  @Test
  void aFootThatWasMeasuredGrowsAtItsOwnRate() {
    FootReadings r = readings(grown(60, 14.0), 470);
    assertThat(r.hornAMonth().low()).isCloseTo(14 / 60.0 * 30.4375, within(1e-9));
    assertThat(r.weeksToNailable().low()).isCloseTo(19 / (14 / 60.0) / 7, within(1e-9));
    assertThat(readings(grown(21, 14.0), 470).hornAMonth()).isEqualTo(Interval.UNKNOWN);
    assertThat(readings(grown(60, null), 470).hornAMonth()).isEqualTo(Interval.UNKNOWN);
  }

  /** Behind the toe one side is whole and the other is not; 8 mm off takes low damage along. */
  @Test
  void readsEachSideAndWhatGoesWithTheTrim() {
    List<WallStretch> wall =
        List.of(
            Trade.sound(Side.MEDIAL, 0, 168, 9.0),
            Trade.sound(Side.LATERAL, 0, 84, 8.0),
            Trade.stretch(Side.LATERAL, 84.0, 126.0, WallState.BROKEN_AWAY, 30.0, null, false),
            Trade.stretch(Side.LATERAL, 126.0, 168.0, WallState.BROKEN_AWAY, 6.0, null, false));
    Measures dressed = ground(8);
    FootReadings trimmed = readings(dressed, wall);
    assertThat(trimmed.strongShareMedial()).isEqualTo(Interval.of(100));
    assertThat(trimmed.strongShareLateral().high()).isLessThan(100);
    assertThat(trimmed.trimmedLossShare().low()).isCloseTo(100 * 42 / 336.0, within(1e-9));
    Measures undressed = ground(0);
    assertThat(readings(undressed, wall).trimmedLossShare()).isEqualTo(Interval.of(0));
  }

  /** A quarter circle of 62 mm puts the widest part at 97.4 mm along the edge. */
  @Test
  void readsTheNailSites() {
    FootReadings r = readings(MEASURES, WALL);
    assertThat(r.rearmostNail()).isCloseTo(97.389, within(0.001));
    assertThat(r.nails().medial().positions()).containsExactly(50.0, 75.4);
    assertThat(r.nailSitesMedial()).isEqualTo(Interval.of(2));
    assertThat(r.nailSitesLateral()).isEqualTo(Interval.of(3));
    assertThat(r.nailSitesWeakerBranch()).isEqualTo(Interval.of(2));
    assertThat(r.nailSitesBoth()).isEqualTo(Interval.of(5));
    assertThat(r.nailSitesWeakerBranchIfBehind()).isEqualTo(Interval.of(5));
  }

  @Test
  void betweenTwoBandsOfWeightTheUsualToeMayBeEither() {
    FootReadings r = readings(Map.of("limb", Limb.LEFT_FORE, "measures", MEASURES), 410);
    assertThat(r.toeLengthOverUsual()).isEqualTo(new Interval(13.5, 20));
  }

  /** An unmapped crack in the side may lie anywhere from 34 to 101 mm along the lateral edge. */
  @Test
  void aCrackTakesNailSites() {
    WallCrack crack =
        Given.a(WallCrack.class, Map.of("place", CrackPlace.SIDE, "side", Side.LATERAL));
    FootReadings r =
        readings(
            Map.of(
                "limb",
                Limb.LEFT_FORE,
                "measures",
                MEASURES,
                "wall",
                WALL,
                "cracks",
                List.of(crack)),
            470);
    assertThat(r.nailSitesLateral()).isEqualTo(new Interval(0, 3));
    assertThat(r.nailSitesMedial()).isEqualTo(Interval.of(2));
    assertThat(r.nailSitesWeakerBranchIfBehind()).isEqualTo(new Interval(3, 5));
  }

  @Test
  void aFootOfWhichNothingIsKnownHasNoReadings() {
    Foot foot = Given.a(Foot.class, Map.of("limb", Limb.LEFT_HIND));
    Assessment assessment = Given.a(Assessment.class, Map.of("feet", List.of(foot)));
    FootReadings r = FootReadings.of(assessment, foot, Trade.LIMITS);
    assertThat(all(r)).allSatisfy((kind, reading) -> assertThat(reading.known()).isFalse());
    assertThat(r.outline()).isNull();
    assertThat(r.wall()).isNull();
    assertThat(r.nails()).isNull();
  }

  /** Every reading that rules may name is computed here, under the same name. */
  @Test
  void everyReadingThatRulesMayNameIsHere() {
    assertThat(all(readings(MEASURES, WALL))).hasSize(ReadingKind.values().length);
  }

  /** Whatever is missing: no exception, and no number that cannot be. */
  @Property
  void anySubsetOfFieldsGivesReadings(@ForAll long seed) {
    Assessment assessment = Feet.any(seed);
    for (Foot foot : assessment.feet()) {
      FootReadings readings = FootReadings.of(assessment, foot, Trade.LIMITS);
      all(readings).forEach(FootReadingsTest::assertPossible);
    }
  }

  private static void assertPossible(ReadingKind kind, Interval reading) {
    if (!reading.known()) {
      return;
    }
    assertThat(reading.low()).as(kind.id()).isLessThanOrEqualTo(reading.high());
    if (kind.name().contains("NAIL_SITES")) {
      assertThat(reading.low()).as(kind.id()).isGreaterThanOrEqualTo(0);
      assertThat(reading.high()).as(kind.id()).isFinite();
    }
    if (kind.fields().contains("foot.wall") && kind.unit().equals("%")) {
      assertThat(reading.low()).as(kind.id()).isBetween(0.0, 100.0);
      assertThat(reading.high()).as(kind.id()).isBetween(0.0, 100.0);
    }
  }

  /** Each kind of reading by calling the method that bears its name. */
  private static Map<ReadingKind, Interval> all(FootReadings readings) {
    Map<ReadingKind, Interval> all = new LinkedHashMap<>();
    for (ReadingKind kind : ReadingKind.values()) {
      try {
        Method method = FootReadings.class.getMethod(methodName(kind));
        all.put(kind, (Interval) method.invoke(readings));
      } catch (ReflectiveOperationException e) {
        throw new AssertionError("no reading " + kind.id(), e);
      }
    }
    return all;
  }

  private static String methodName(ReadingKind kind) {
    StringBuilder name = new StringBuilder();
    for (String word : kind.name().toLowerCase(Locale.ROOT).split("_")) {
      name.append(
          name.isEmpty() ? word : Character.toUpperCase(word.charAt(0)) + word.substring(1));
    }
    return name.toString();
  }

  private static Measures ground(double toTrim) {
    return Given.a(
        Measures.class,
        Map.of("bearingLength", 130.0, "width", 124.0, "toeToWidest", 62.0, "toTrim", toTrim));
  }

  private static FootReadings readings(Measures measures, List<WallStretch> wall) {
    return readings(Map.of("limb", Limb.LEFT_FORE, "measures", measures, "wall", wall), 470);
  }

  private static Map<String, ?> grown(Integer days, Double horn) {
    Map<String, Object> care = new HashMap<>();
    care.put("wallGoneDays", days);
    care.put("hornSince", horn);
    return Map.of(
        "limb",
        Limb.LEFT_FORE,
        "measures",
        MEASURES,
        "wall",
        WALL,
        "care",
        Given.a(Care.class, care));
  }

  private static FootReadings readings(Map<String, ?> known, double weight) {
    Foot foot = Given.a(Foot.class, known);
    Measures steeper = Given.a(Measures.class, Map.of("toeAngle", 51.0));
    Foot pair =
        Given.a(Foot.class, Map.of("limb", Limb.RIGHT_FORE, "measures", steeper, "lameness", 1));
    Horse horse = Given.a(Horse.class, Map.of("ageYears", 6, "weight", weight));
    Assessment assessment =
        Given.a(Assessment.class, Map.of("horse", horse, "feet", List.of(foot, pair)));
    return FootReadings.of(assessment, foot, Trade.LIMITS);
  }
}
