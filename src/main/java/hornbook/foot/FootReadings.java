package hornbook.foot;

import hornbook.assessment.Assessment;
import hornbook.assessment.Foot;
import hornbook.assessment.Limb;
import hornbook.assessment.Measures;
import hornbook.foot.number.Interval;
import hornbook.foot.number.Unknown;
import hornbook.foot.shape.GroundOutline;
import hornbook.foot.shape.SideProfile;
import hornbook.foot.wall.NailSites;
import hornbook.foot.wall.NailingLimits;
import hornbook.foot.wall.WallGroup;
import hornbook.foot.wall.WallSurvey;

/**
 * Every number computed from one foot, and the parts it comes from. A reading that needs something
 * not looked at is {@link Interval#UNKNOWN}; a part that cannot be drawn is null.
 *
 * <p>Wall, shares and nail sites are those of the trimmed foot.
 *
 * @param outline null without bearing length and width
 * @param wall after the trim; null when the wall was not mapped
 * @param nails sites up to the usual rearmost limit; null without outline or wall
 * @param nailsIfBehind sites with that limit waived; null without outline or wall
 * @param untrimmed the wall as it was mapped; null when it was not
 * @param hornAMonth what this foot was seen to grow, mm a month
 * @param rearmostNail the usual rearmost limit, mm along the edge; unknown without outline
 */
public record FootReadings(
    Measures measures,
    FootLimits limits,
    SideProfile profile,
    GroundOutline outline,
    WallSurvey wall,
    NailSites nails,
    NailSites nailsIfBehind,
    double rearmostNail,
    FootPair pair,
    BodyWeight weight,
    Interval ageDays,
    Trim trim,
    WallSurvey untrimmed,
    Interval hornAMonth) {

  /** Less than this, in percent, is rounding and not wall. */
  private static final double ROUNDING = 1e-9;

  public static FootReadings of(Assessment assessment, Foot foot, FootLimits limits) {
    Measures measures = foot.measures();
    boolean fore = foot.limb().fore();
    NailingLimits nailing = limits.nailing();
    GroundOutline outline = GroundOutline.of(measures, fore, limits.shape());
    Trim trim = Trim.of(foot, assessment.visit(), limits.growth(), limits.trim());
    WallSurvey wall = WallSurvey.of(trim.off(foot.wall()), outline, limits.edgeSlack());
    boolean placed = outline != null && wall != null;
    double rearmost = outline == null ? Unknown.NUMBER : nailing.rearmost(outline, fore);
    return new FootReadings(
        measures,
        limits,
        SideProfile.of(measures),
        outline,
        wall,
        placed ? NailSites.of(wall, foot.cracks(), nailing, rearmost) : null,
        placed ? NailSites.of(wall, foot.cracks(), nailing, nailing.rearmostWaived(outline)) : null,
        rearmost,
        FootPair.of(foot, other(assessment, foot.limb().pair())),
        BodyWeight.of(assessment.horse(), limits.grownDays()),
        Age.days(assessment.horse()),
        trim,
        WallSurvey.of(foot.wall(), outline, limits.edgeSlack()),
        Growth.seen(foot.care(), limits.ownGrowthDays()));
  }

  public Interval toeHeelAngleDifference() {
    return Interval.of(profile.toeHeelAngleDifference());
  }

  public Interval toeHeelRatio() {
    return Interval.of(profile.toeHeelRatio());
  }

  public Interval hoofPasternDifference() {
    return Interval.of(profile.hoofPasternDifference());
  }

  /** Per cent. */
  public Interval widestPartShare() {
    return Interval.of(profile.shareAheadOfMiddle());
  }

  public Interval toeLengthOverUsual() {
    Interval usual = limits.usualToe().at(weight.kg());
    return Interval.between(profile.toeLength() - usual.high(), profile.toeLength() - usual.low());
  }

  /** Per cent (turner-1992: contracted heels under 67). */
  public Interval frogWidthShare() {
    return Interval.of(100 * Unknown.or(measures.frogWidth()) / Unknown.or(measures.frogLength()));
  }

  /** The inner heel bulb above the outer, mm. */
  public Interval medialOverLateralHeel() {
    return Interval.of(heelDifference());
  }

  /** Without sign, mm (ogrady-2011: sheared heels from 5). */
  public Interval heelBulbDifference() {
    return Interval.of(Math.abs(heelDifference()));
  }

  public Interval pairAngleGap() {
    return Interval.of(pair.angleGap());
  }

  public Interval steeperThanPair() {
    return Interval.of(pair.angle());
  }

  public Interval oppositeLameness() {
    return Interval.of(pair.lameness());
  }

  public Interval oppositeLameDays() {
    return Interval.of(pair.lameDays());
  }

  public Interval bodyWeight() {
    return Interval.of(weight.kg());
  }

  public Interval hoofLoadIndex() {
    return Interval.of(Load.hoofLoadIndex(weight.kg(), Unknown.or(measures.coronetGirth())));
  }

  public Interval soundShare() {
    return wall == null ? Interval.UNKNOWN : wall.share(WallGroup.SOUND);
  }

  public Interval soundShareMedial() {
    return wall == null ? Interval.UNKNOWN : wall.medial().share(WallGroup.SOUND);
  }

  public Interval soundShareLateral() {
    return wall == null ? Interval.UNKNOWN : wall.lateral().share(WallGroup.SOUND);
  }

  public Interval missingShare() {
    return wall == null ? Interval.UNKNOWN : wall.share(WallGroup.MISSING);
  }

  public Interval separatedShare() {
    return wall == null ? Interval.UNKNOWN : wall.share(WallGroup.SEPARATED);
  }

  public Interval missingOrSeparatedShare() {
    return wall == null ? Interval.UNKNOWN : wall.defectShare();
  }

  /** Lost or separated higher than an edge: there the foot has lost support. */
  public Interval tallLossShare() {
    return wall == null ? Interval.UNKNOWN : wall.tallDefectShare(limits.tallLoss());
  }

  /** What was lost or separated on the map and is gone with the trim. */
  public Interval trimmedLossShare() {
    if (wall == null) {
      return Interval.UNKNOWN;
    }
    Interval before = untrimmed.defectShare();
    double gone = before.low() - wall.defectShare().low();
    return Interval.of(gone < ROUNDING ? 0 : gone);
  }

  /** Lost or separated in quarter and heel, on the side that has lost more, mm. */
  public Interval lossBehind() {
    return wall == null
        ? Interval.UNKNOWN
        : wall.defectBehind(limits.nailing().regions().sideEnd());
  }

  /** Sound, or flared and dressed, as a share of the whole edge. */
  public Interval strongShare() {
    return wall == null ? Interval.UNKNOWN : wall.strongShare();
  }

  public Interval strongShareMedial() {
    return strong(true);
  }

  public Interval strongShareLateral() {
    return strong(false);
  }

  /** Of the side behind the toe: what a toe has lost says nothing of the wall behind it. */
  private Interval strong(boolean inner) {
    if (wall == null) {
      return Interval.UNKNOWN;
    }
    double toe = limits.nailing().regions().toeEnd();
    return (inner ? wall.medial() : wall.lateral()).strongShare(toe);
  }

  public Interval longestDefect() {
    return wall == null ? Interval.UNKNOWN : wall.longestDefect();
  }

  public Interval tallestDefect() {
    return wall == null ? Interval.UNKNOWN : wall.tallestDefect();
  }

  public Interval thinnestSoundWall() {
    return wall == null ? Interval.UNKNOWN : wall.thinnestSound(rearmostNail);
  }

  public Interval nailSitesMedial() {
    return nails == null ? Interval.UNKNOWN : nails.medial().count();
  }

  public Interval nailSitesLateral() {
    return nails == null ? Interval.UNKNOWN : nails.lateral().count();
  }

  public Interval nailSitesWeakerBranch() {
    return nails == null ? Interval.UNKNOWN : nails.weaker();
  }

  public Interval nailSitesBoth() {
    return nails == null ? Interval.UNKNOWN : nails.both();
  }

  public Interval nailSitesWeakerBranchIfBehind() {
    return nailsIfBehind == null ? Interval.UNKNOWN : nailsIfBehind.weaker();
  }

  public Interval bearingShare() {
    return wall == null ? Interval.UNKNOWN : wall.bearingShare();
  }

  public Interval bearingPressureRatio() {
    return Load.pressureRatio(bearingShare());
  }

  /**
   * At this foot's own rate, else at the mean, until the tallest defect has passed the usual nail
   * exit.
   */
  public Interval weeksToNailable() {
    Interval tall = tallestDefect();
    return Interval.between(weeks(tall.low()), weeks(tall.high()));
  }

  private double weeks(double height) {
    double rate = hornAMonth.known() ? hornAMonth.low() : limits.growth().mean();
    return Growth.weeks(height, limits.nailExitHeight(), rate);
  }

  private double heelDifference() {
    return Unknown.or(measures.medialHeelHeight()) - Unknown.or(measures.lateralHeelHeight());
  }

  private static Foot other(Assessment assessment, Limb limb) {
    for (Foot foot : assessment.feet()) {
      if (foot.limb() == limb) {
        return foot;
      }
    }
    return null;
  }
}
