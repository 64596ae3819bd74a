package hornbook.advice.fact;

import hornbook.assessment.Assessment;
import hornbook.assessment.Foot;
import hornbook.assessment.Horse;
import hornbook.assessment.WallState;
import hornbook.assessment.Work;
import hornbook.assessment.word.Diagnosis;
import hornbook.assessment.word.Drainage;
import hornbook.assessment.word.TesterSite;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * The fields that matter only on some feet: on any other foot nobody asks for them, and where they
 * were left out nothing is unknown.
 */
public final class AskedWhere {
  /** Kilograms under which an animal may as well be a donkey. */
  private static final double SMALL = 300;

  private static final Set<Work> WORKING = EnumSet.of(Work.SPORT, Work.RACING, Work.DRAUGHT);

  private AskedWhere() {}

  /** The names of the fields that make no difference on this foot. */
  public static Set<String> pointless(Assessment assessment, Foot foot) {
    Set<String> pointless = new HashSet<>(ofHorse(assessment.horse(), foot));
    if (!nailSuspected(foot)) {
      pointless.addAll(List.of("soreNail", "nailDrawn"));
    }
    if (!pus(foot)) {
      pointless.add("poulticedDays");
    }
    Integer poulticed = foot.care().poulticedDays();
    if (poulticed == null || poulticed == 0) {
      pointless.add("dryForDays");
    }
    return pointless;
  }

  /** A small animal may be a donkey; work matters where a repair has to harden before it. */
  private static Set<String> ofHorse(Horse horse, Foot foot) {
    Set<String> pointless = new HashSet<>();
    if (horse.weight() == null || horse.weight() >= SMALL) {
      pointless.add("species");
    }
    boolean works = horse.work() != null && WORKING.contains(horse.work());
    boolean broken =
        foot.wall() != null && foot.wall().stream().anyMatch(one -> one.state() != WallState.SOUND);
    if (!works || !broken) {
      pointless.add("worksInDays");
    }
    return pointless;
  }

  private static boolean nailSuspected(Foot foot) {
    List<TesterSite> pain = foot.signs().testerPain();
    return pain != null && pain.contains(TesterSite.NAIL)
        || Boolean.TRUE.equals(foot.signs().bloodAtNail())
        || Boolean.TRUE.equals(foot.lameSinceShod());
  }

  private static boolean pus(Foot foot) {
    Drainage drains = foot.signs().drainage();
    return drains != null && drains != Drainage.NONE || foot.diagnosis() == Diagnosis.ABSCESS;
  }
}
