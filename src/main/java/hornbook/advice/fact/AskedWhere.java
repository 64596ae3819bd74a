package hornbook.advice.fact;

import hornbook.assessment.Foot;
import hornbook.assessment.word.Diagnosis;
import hornbook.assessment.word.Drainage;
import hornbook.assessment.word.TesterSite;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * The fields that matter only on some feet: on any other foot nobody asks for them, and where they
 * were left out nothing is unknown.
 */
public final class AskedWhere {
  private AskedWhere() {}

  /** The names of the fields that make no difference on this foot. */
  public static Set<String> pointless(Foot foot) {
    Set<String> pointless = new HashSet<>();
    if (!feverMatters(foot)) {
      pointless.add("bodyTemperature");
    }
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

  /** Nobody takes the temperature of a horse that goes sound and has no pus in the foot. */
  private static boolean feverMatters(Foot foot) {
    return foot.lameness() == null || foot.lameness() > 0 || pus(foot);
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
