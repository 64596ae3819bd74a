package hornbook.plan.time;

import hornbook.advice.Advice;
import hornbook.advice.FootAdvice;
import hornbook.foot.Age;
import hornbook.rulebook.Instruction;
import hornbook.rulebook.compile.MissingFromRulebook;
import hornbook.rulebook.fact.Urgency;
import java.util.List;
import java.util.Optional;

/** The ten lines for the owner of a horse on which no work was done to a foot. */
public final class OwnerWithoutWork {
  private static final List<String> UNTOUCHED =
      List.of(
          "lame",
          "heat",
          "soft-ground",
          "chips",
          "footsore",
          "pick-out",
          "nothing-on",
          "work",
          "tetanus",
          "untouched-next");

  private static final List<String> WAITING =
      List.of(
          "wait-worse",
          "wait-work",
          "wait-medicine",
          "wait-stand",
          "nothing-on",
          "heat",
          "wait-look",
          "wait-tell",
          "wait-ready",
          "wait-farrier");

  private OwnerWithoutWork() {}

  /** While a vet has to come to the horse, what to do until then; else everyday care. */
  public static List<Instruction> lines(Advice advice) {
    Optional<Urgency> soonest =
        advice.feet().stream()
            .map(FootAdvice::urgency)
            .flatMap(Optional::stream)
            .filter(one -> one.compareTo(Urgency.DAYS) <= 0)
            .min(Urgency::compareTo);
    List<String> keys = soonest.isPresent() ? WAITING : UNTOUCHED;
    boolean young = young(advice);
    return keys.stream()
        .map(key -> soonest.equals(Optional.of(Urgency.DAYS)) ? atEase(key) : key)
        .map(key -> young && key.equals("work") ? "foal" : key)
        .map(key -> MissingFromRulebook.instruction(advice.rulebook(), "owner." + key))
        .toList();
  }

  /** Where the vet may take days to come, the horse need not stand still so long. */
  private static String atEase(String key) {
    return key.equals("wait-stand") ? "wait-ground" : key;
  }

  private static boolean young(Advice advice) {
    double grown = advice.feet().get(0).sheet().computing().grownDays();
    return Age.days(advice.assessment().horse()).high() < grown;
  }
}
