package hornbook.advice.fact;

import hornbook.assessment.Foot;
import hornbook.assessment.Horse;
import hornbook.assessment.Work;
import hornbook.assessment.word.Diagnosis;
import hornbook.assessment.word.Drainage;
import hornbook.assessment.word.Shoeing;
import hornbook.assessment.word.TesterSite;
import hornbook.foot.BodyWeight;
import hornbook.foot.FootLimits;
import hornbook.foot.wall.WallGroup;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * The fields that matter only on some feet: on any other foot nobody asks for them, and where they
 * were left out nothing is unknown.
 */
public final class AskedWhere {
  private final Horse horse;
  private final Foot foot;
  private final FootLimits limits;

  private AskedWhere(Horse horse, Foot foot, FootLimits limits) {
    this.horse = horse;
    this.foot = foot;
    this.limits = limits;
  }

  /** The names of the fields that make no difference on this foot. */
  public static Set<String> pointless(Horse horse, Foot foot, FootLimits limits) {
    return new AskedWhere(horse, foot, limits).pointless();
  }

  private Set<String> pointless() {
    Set<String> pointless = new HashSet<>();
    unless(feverMatters(), pointless, "bodyTemperature");
    unless(nailSuspected(), pointless, "soreNail", "nailDrawn");
    unless(pus(), pointless, "poulticedDays");
    unless(atLeast(foot.care().poulticedDays(), 1), pointless, "dryForDays");
    unless(small(), pointless, "species");
    unless(lost(0) && works(), pointless, "worksInDays");
    unless(shod() && (lame() || heelsMeasured()), pointless, "presentShoe");
    unless(shod() && (lame() || sore()), pointless, "pad");
    unless(shod() && works() && foot.wall() != null, pointless, "studs");
    unless(lost(limits.nailExitHeight()), pointless, "wallGoneDays");
    unless(
        lost(limits.nailExitHeight())
            && atLeast(foot.care().wallGoneDays(), limits.ownGrowthDays()),
        pointless,
        "hornSince");
    return pointless;
  }

  private static void unless(boolean matters, Set<String> pointless, String... fields) {
    if (!matters) {
      pointless.addAll(List.of(fields));
    }
  }

  private static boolean atLeast(Integer value, double least) {
    return value != null && value >= least;
  }

  /** Nobody takes the temperature of a horse that goes sound and has no pus in the foot. */
  private boolean feverMatters() {
    return foot.lameness() == null || foot.lameness() > 0 || pus();
  }

  private boolean nailSuspected() {
    List<TesterSite> pain = foot.signs().testerPain();
    return pain != null && pain.contains(TesterSite.NAIL)
        || Boolean.TRUE.equals(foot.signs().bloodAtNail())
        || Boolean.TRUE.equals(foot.lameSinceShod());
  }

  private boolean pus() {
    Drainage drains = foot.signs().drainage();
    return drains != null && drains != Drainage.NONE || foot.diagnosis() == Diagnosis.ABSCESS;
  }

  /** What weighs more than that is plainly a horse; what was not weighed may be anything. */
  private boolean small() {
    double kg = BodyWeight.of(horse, limits.grownDays()).kg();
    return !(kg > limits.smallAnimal());
  }

  private boolean works() {
    return horse.work() != Work.REST;
  }

  /** Only what is on the foot can have a pad, studs or a bar. */
  private boolean shod() {
    return foot.shoeing() == Shoeing.NAILED || foot.shoeing() == Shoeing.GLUED;
  }

  private boolean lame() {
    return atLeast(foot.lameness(), 1);
  }

  private boolean sore() {
    List<TesterSite> pain = foot.signs().testerPain();
    return pain != null && !pain.isEmpty();
  }

  private boolean heelsMeasured() {
    return foot.measures().toeAngle() != null && foot.measures().heelAngle() != null;
  }

  /** Whether wall is missing that high or higher; a loss nobody measured may be. */
  private boolean lost(double height) {
    return foot.wall() != null
        && foot.wall().stream()
            .filter(one -> one.state() != null && WallGroup.of(one.state()) == WallGroup.MISSING)
            .anyMatch(one -> one.height() == null || one.height() > height);
  }
}
