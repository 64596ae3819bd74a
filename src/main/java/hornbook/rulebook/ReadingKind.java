package hornbook.rulebook;

import hornbook.assessment.word.Word;
import java.util.ArrayList;
import java.util.List;

/**
 * The numbers computed from an assessment that rules may read beside the measured fields
 * themselves. Paths are fields of the assessment: those under {@code foot.} of the foot in hand,
 * those under {@code pair.} of the other foot of its pair.
 */
public enum ReadingKind {
  TOE_HEEL_ANGLE_DIFFERENCE(
      "toe angle minus heel angle", "deg", "foot.measures.toeAngle", "foot.measures.heelAngle"),
  TOE_HEEL_RATIO(
      "toe length to heel length", "ratio", "foot.measures.toeLength", "foot.measures.heelLength"),
  HOOF_PASTERN_DIFFERENCE(
      "toe angle minus pastern angle",
      "deg",
      "foot.measures.toeAngle",
      "foot.measures.pasternAngle"),
  WIDEST_PART_SHARE(
      "share of the bearing length ahead of the widest part",
      "%",
      "foot.measures.toeToWidest",
      "foot.measures.bearingLength"),
  TOE_LENGTH_OVER_USUAL(
      "toe length over the usual for the body weight",
      "mm",
      "foot.measures.toeLength",
      "horse.weight"),
  FROG_WIDTH_SHARE(
      "frog width as a share of frog length",
      "%",
      "foot.measures.frogWidth",
      "foot.measures.frogLength"),
  HEEL_BULB_DIFFERENCE(
      "difference in height of the heel bulbs",
      "mm",
      "foot.measures.medialHeelHeight",
      "foot.measures.lateralHeelHeight"),
  MEDIAL_OVER_LATERAL_HEEL(
      "inner heel bulb above the outer",
      "mm",
      "foot.measures.medialHeelHeight",
      "foot.measures.lateralHeelHeight"),
  PAIR_ANGLE_GAP(
      "difference in toe angle between the pair",
      "deg",
      "foot.measures.toeAngle",
      "pair.measures.toeAngle"),
  STEEPER_THAN_PAIR(
      "toe angle above that of its pair",
      "deg",
      "foot.measures.toeAngle",
      "pair.measures.toeAngle"),
  OPPOSITE_LAMENESS("lameness of the other foot of the pair", "grade", "pair.lameness"),
  OPPOSITE_LAME_DAYS("days the other foot of the pair has been lame", "days", "pair.lameForDays"),
  BODY_WEIGHT("body weight", "kg", "horse.weight"),
  HOOF_LOAD_INDEX(
      "body weight for the size of the hoof", "psi", "horse.weight", "foot.measures.coronetGirth"),
  AGE_DAYS("age", "days", "horse.ageDays", "horse.ageYears"),
  SOUND_SHARE(
      "sound share of the ground edge",
      "%",
      "foot.wall",
      "foot.measures.bearingLength",
      "foot.measures.width"),
  SOUND_SHARE_MEDIAL(
      "sound share of the inner edge",
      "%",
      "foot.wall",
      "foot.measures.bearingLength",
      "foot.measures.width"),
  SOUND_SHARE_LATERAL(
      "sound share of the outer edge",
      "%",
      "foot.wall",
      "foot.measures.bearingLength",
      "foot.measures.width"),
  /** Broken away or resected. */
  MISSING_SHARE(
      "missing share of the ground edge",
      "%",
      "foot.wall",
      "foot.measures.bearingLength",
      "foot.measures.width"),
  /** Separated or crumbling. */
  SEPARATED_SHARE(
      "separated or crumbling share of the ground edge",
      "%",
      "foot.wall",
      "foot.measures.bearingLength",
      "foot.measures.width"),
  MISSING_OR_SEPARATED_SHARE(
      "missing or separated share of the ground edge",
      "%",
      "foot.wall",
      "foot.measures.bearingLength",
      "foot.measures.width"),
  /** Missing or separated higher than an edge; what was not measured counts as high. */
  TALL_LOSS_SHARE(
      "share of the ground edge lost or separated high up",
      "%",
      "foot.wall",
      "foot.measures.bearingLength",
      "foot.measures.width",
      "foot.measures.toTrim"),
  /** Missing or separated on the map, and gone with the trim. */
  TRIMMED_LOSS_SHARE(
      "share of the ground edge whose damage the trim takes off",
      "%",
      "foot.wall",
      "foot.measures.bearingLength",
      "foot.measures.width",
      "foot.measures.toTrim"),
  /** Missing or separated in quarter and heel, on the side that has lost more. */
  LOSS_BEHIND(
      "length of quarter and heel lost or separated",
      "mm",
      "foot.wall",
      "foot.measures.bearingLength",
      "foot.measures.width"),
  /** Sound, or flared and so dressed. */
  STRONG_SHARE(
      "share of the ground edge that holds, flares dressed",
      "%",
      "foot.wall",
      "foot.measures.bearingLength",
      "foot.measures.width"),
  /** The same of one side, behind the toe. */
  STRONG_SHARE_MEDIAL(
      "share of the inner wall behind the toe that holds",
      "%",
      "foot.wall",
      "foot.measures.bearingLength",
      "foot.measures.width"),
  STRONG_SHARE_LATERAL(
      "share of the outer wall behind the toe that holds",
      "%",
      "foot.wall",
      "foot.measures.bearingLength",
      "foot.measures.width"),
  /** The longest unbroken run, on either side, of edge that is missing or separated. */
  LONGEST_DEFECT(
      "longest run of missing or separated edge",
      "mm",
      "foot.wall",
      "foot.measures.bearingLength",
      "foot.measures.width"),
  /**
   * The greatest height above the ground of a stretch that is missing or separated; 0 with none.
   */
  TALLEST_DEFECT(
      "height of the tallest defect",
      "mm",
      "foot.wall",
      "foot.measures.bearingLength",
      "foot.measures.width"),
  /** The thinnest sound wall from the toe to the rearmost place a nail may go. */
  THINNEST_SOUND_WALL("thinnest sound wall in the nailing region", "mm", "foot.wall"),
  NAIL_SITES_MEDIAL(
      "nail sites, medial",
      "",
      "foot.wall",
      "foot.cracks",
      "foot.measures.bearingLength",
      "foot.measures.width"),
  NAIL_SITES_LATERAL(
      "nail sites, lateral",
      "",
      "foot.wall",
      "foot.cracks",
      "foot.measures.bearingLength",
      "foot.measures.width"),
  /** The smaller count of the two branches. */
  NAIL_SITES_WEAKER_BRANCH(
      "nail sites, weaker branch",
      "",
      "foot.wall",
      "foot.cracks",
      "foot.measures.bearingLength",
      "foot.measures.width"),
  NAIL_SITES_BOTH(
      "nail sites, both branches",
      "",
      "foot.wall",
      "foot.cracks",
      "foot.measures.bearingLength",
      "foot.measures.width"),
  /** As the weaker branch, but with nails allowed behind the usual rearmost limit. */
  NAIL_SITES_WEAKER_BRANCH_IF_BEHIND(
      "nail sites, weaker branch, nailing behind the usual limit",
      "",
      "foot.wall",
      "foot.cracks",
      "foot.measures.bearingLength",
      "foot.measures.width"),
  /**
   * The share of the whole edge that still bears: all but what is missing, separated or crumbling.
   */
  BEARING_SHARE(
      "share of the edge that still bears",
      "%",
      "foot.wall",
      "foot.measures.bearingLength",
      "foot.measures.width"),
  /** Pressure on the wall that bears against the pressure if the whole edge did. */
  BEARING_PRESSURE_RATIO(
      "pressure on the wall that is left",
      "ratio",
      "foot.wall",
      "foot.measures.bearingLength",
      "foot.measures.width"),
  /**
   * Growth, at its own rate or the mean, until the tallest defect has passed the usual nail exit.
   */
  WEEKS_TO_NAILABLE("weeks until the defect has grown below the nail exits", "weeks", "foot.wall"),
  /** What this foot was seen to grow since its wall was lost. */
  HORN_A_MONTH(
      "growth of this foot in a month",
      "mm/month",
      "foot.care.wallGoneDays",
      "foot.care.hornSince");

  private final String id = Word.kebab(name());
  private final String label;
  private final String unit;
  private final List<String> fields;

  ReadingKind(String label, String unit, String... fields) {
    this.label = label;
    this.unit = unit;
    this.fields = List.of(fields);
  }

  /** The name rules use: kebab-case. */
  public String id() {
    return id;
  }

  public String label() {
    return label;
  }

  /** The unit as limits write it: mm, deg, %, kg, psi, ratio, days, weeks, grade, or empty. */
  public String unit() {
    return unit;
  }

  /** The fields that have to be known for the reading to be. */
  public List<String> fields() {
    return fields;
  }

  /** The number of that name; null when a rule reads a field of the assessment by it. */
  public static ReadingKind of(String id) {
    for (ReadingKind kind : values()) {
      if (kind.id.equals(id)) {
        return kind;
      }
    }
    return null;
  }

  /** How the ids of the limits begin without which it would be another number. */
  public List<String> computedWith() {
    List<String> with = new ArrayList<>();
    if (fields.contains("foot.wall")) {
      with.addAll(List.of("outline.", "trim.", "growth.mean"));
    }
    if (name().startsWith("NAIL") || this == THINNEST_SOUND_WALL) {
      with.add("nails.");
    }
    if (name().startsWith("NAIL") || name().startsWith("STRONG") || this == LOSS_BEHIND) {
      with.add("wall.");
    }
    if (this == HORN_A_MONTH) {
      with.add("own-growth.");
    }
    if (this == TALL_LOSS_SHARE) {
      with.add("loss.");
    }
    if (this == TOE_LENGTH_OVER_USUAL) {
      with.add("toe.");
    }
    return with;
  }

  /** Whether it can lie below zero. */
  boolean signed() {
    return switch (this) {
      case TOE_HEEL_ANGLE_DIFFERENCE,
          HOOF_PASTERN_DIFFERENCE,
          TOE_LENGTH_OVER_USUAL,
          MEDIAL_OVER_LATERAL_HEEL,
          STEEPER_THAN_PAIR ->
          true;
      default -> false;
    };
  }

  /** The works its formula comes from; empty where it is plain arithmetic. */
  public List<String> sources() {
    return switch (this) {
      case BODY_WEIGHT -> List.of("carroll-1988");
      case HOOF_LOAD_INDEX -> List.of("turner-1992");
      default -> List.of();
    };
  }
}
