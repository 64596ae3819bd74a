package hornbook.study.exercise;

import hornbook.assessment.Limb;
import java.util.List;
import java.util.Map;

/**
 * What a learner thinks of one foot. Null was not answered, which is not the same as an empty list
 * or {@code none}.
 *
 * @param vet how soon, or {@code none}
 * @param vetFor ids of the dangers the vet is called for
 * @param technique what goes on today, or {@code none}
 * @param because ids of rules, and words of the learner's own
 * @param ruledOut techniques and supports, each with ids of rules
 * @param ask paths of fields that should have been looked at
 * @param nextVisit days until the next visit
 * @param departs why the learner knowingly goes another way than the advice
 */
public record FootAnswer(
    Limb limb,
    List<String> findings,
    String vet,
    List<String> vetFor,
    String technique,
    List<String> because,
    Map<String, List<String>> ruledOut,
    List<String> supports,
    List<String> cautions,
    List<String> ask,
    Double nextVisit,
    String departs) {
  /** The keys of an answer, in the order of its file. */
  public static final List<String> KEYS =
      List.of(
          "limb",
          "findings",
          "vet",
          "vetFor",
          "technique",
          "because",
          "ruledOut",
          "supports",
          "cautions",
          "ask",
          "nextVisit",
          "departs");

  /** A foot of which nothing was answered. */
  public static FootAnswer blank(Limb limb) {
    return new FootAnswer(limb, null, null, null, null, null, null, null, null, null, null, null);
  }

  /** The rules among the reasons given. */
  public List<String> becauseRules() {
    return because == null ? List.of() : because.stream().filter(FootAnswer::rule).toList();
  }

  /** Whether a reason is the id of a rule, and not words. */
  public static boolean rule(String reason) {
    return reason.matches("[A-Z]\\d{3}");
  }

  /** Whether the learner says why the advice is not followed. */
  public boolean departing() {
    return departs != null && !departs.isBlank();
  }
}
