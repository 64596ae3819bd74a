package hornbook.advice.fact;

import hornbook.foot.FootReadings;
import hornbook.foot.number.Interval;
import hornbook.rulebook.ReadingKind;

/** Finds the number of each kind among those computed of a foot. */
final class Computed {
  private Computed() {}

  static Interval value(ReadingKind kind, FootReadings readings) {
    return switch (kind) {
      case TOE_HEEL_ANGLE_DIFFERENCE -> readings.toeHeelAngleDifference();
      case TOE_HEEL_RATIO -> readings.toeHeelRatio();
      case HOOF_PASTERN_DIFFERENCE -> readings.hoofPasternDifference();
      case WIDEST_PART_SHARE -> readings.widestPartShare();
      case TOE_LENGTH_OVER_USUAL -> readings.toeLengthOverUsual();
      case FROG_WIDTH_SHARE -> readings.frogWidthShare();
      case HEEL_BULB_DIFFERENCE -> readings.heelBulbDifference();
      case MEDIAL_OVER_LATERAL_HEEL -> readings.medialOverLateralHeel();
      case PAIR_ANGLE_GAP -> readings.pairAngleGap();
      case STEEPER_THAN_PAIR -> readings.steeperThanPair();
      case OPPOSITE_LAMENESS -> readings.oppositeLameness();
      case OPPOSITE_LAME_DAYS -> readings.oppositeLameDays();
      case BODY_WEIGHT -> readings.bodyWeight();
      case HOOF_LOAD_INDEX -> readings.hoofLoadIndex();
      case AGE_DAYS -> readings.ageDays();
      case SOUND_SHARE -> readings.soundShare();
      case SOUND_SHARE_MEDIAL -> readings.soundShareMedial();
      case SOUND_SHARE_LATERAL -> readings.soundShareLateral();
      case MISSING_SHARE -> readings.missingShare();
      case SEPARATED_SHARE -> readings.separatedShare();
      case MISSING_OR_SEPARATED_SHARE -> readings.missingOrSeparatedShare();
      case TALL_LOSS_SHARE -> readings.tallLossShare();
      case TRIMMED_LOSS_SHARE -> readings.trimmedLossShare();
      case LOSS_BEHIND -> readings.lossBehind();
      case STRONG_SHARE -> readings.strongShare();
      case STRONG_SHARE_MEDIAL -> readings.strongShareMedial();
      case STRONG_SHARE_LATERAL -> readings.strongShareLateral();
      case LONGEST_DEFECT -> readings.longestDefect();
      case TALLEST_DEFECT -> readings.tallestDefect();
      case THINNEST_SOUND_WALL -> readings.thinnestSoundWall();
      case NAIL_SITES_MEDIAL -> readings.nailSitesMedial();
      case NAIL_SITES_LATERAL -> readings.nailSitesLateral();
      case NAIL_SITES_WEAKER_BRANCH -> readings.nailSitesWeakerBranch();
      case NAIL_SITES_BOTH -> readings.nailSitesBoth();
      case NAIL_SITES_WEAKER_BRANCH_IF_BEHIND -> readings.nailSitesWeakerBranchIfBehind();
      case BEARING_SHARE -> readings.bearingShare();
      case BEARING_PRESSURE_RATIO -> readings.bearingPressureRatio();
      case WEEKS_TO_NAILABLE -> readings.weeksToNailable();
      case HORN_A_MONTH -> readings.hornAMonth();
    };
  }
}
