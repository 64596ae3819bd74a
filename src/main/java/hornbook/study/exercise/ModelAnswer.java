package hornbook.study.exercise;

import hornbook.advice.Advice;
import hornbook.advice.CautionGiven;
import hornbook.advice.FindingGiven;
import hornbook.advice.FootAdvice;
import hornbook.advice.OptionAdvice;
import hornbook.advice.Question;
import hornbook.advice.QuestionValue;
import hornbook.advice.ReasonGiven;
import hornbook.advice.ReferralGiven;
import hornbook.advice.Verdict;
import hornbook.assessment.Limb;
import hornbook.plan.Plan;
import hornbook.plan.PlanMaker;
import hornbook.plan.sheet.PlanWishes;
import hornbook.plan.sheet.Technique;
import hornbook.rulebook.fact.Bearing;
import hornbook.rulebook.fact.CitedFact;
import hornbook.rulebook.fact.Finding;
import hornbook.rulebook.fact.Urgency;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The full answer to a foot, as the rule base has it: what decides it, and no more. Where a case
 * says what it expects, that is the answer.
 */
public final class ModelAnswer {
  /** Open questions that are part of the answer where nothing can be chosen without them. */
  private static final int MOST_QUESTIONS = 5;

  private static final PlanWishes NO_WISHES =
      new PlanWishes(null, null, null, null, null, List.of(), null);

  private final Advice advice;
  private final FootAdvice foot;
  private final Expected expected;

  private ModelAnswer(Advice advice, FootAdvice foot, Expected expected) {
    this.advice = advice;
    this.foot = foot;
    this.expected = expected;
  }

  /**
   * The answer to one foot.
   *
   * @param expected what a case expects of it; null for a foot of one's own
   */
  public static FootAnswer of(Advice advice, FootAdvice foot, Expected expected) {
    return new ModelAnswer(advice, foot, expected).answer();
  }

  /** The answers to every foot a case expects one of. */
  public static LearnerAnswer of(Exercise exercise, Advice advice) {
    List<FootAnswer> feet = new ArrayList<>();
    for (FootAdvice foot : advice.feet()) {
      Expected expected = exercise.expected().get(foot.limb());
      if (expected != null) {
        feet.add(of(advice, foot, expected));
      }
    }
    return new LearnerAnswer("model answer", exercise.name(), List.copyOf(feet));
  }

  private FootAnswer answer() {
    Limb limb = foot.limb();
    String first = foot.firstChoice().map(OptionAdvice::id).orElse(Vocabulary.NONE);
    return new FootAnswer(
        limb,
        orElse(expected == null ? null : expected.findings(), findings()),
        foot.urgency().map(Urgency::word).orElse(Vocabulary.NONE),
        foot.referrals().stream().map(ReferralGiven::id).distinct().toList(),
        first,
        orElse(expected == null ? null : expected.because(), because()),
        ruledOut(),
        expected == null ? supports(first) : expected.supports(),
        orElse(expected == null ? null : expected.cautions(), cautions(first)),
        orElse(expected == null ? null : expected.ask(), ask()),
        nextVisit(first),
        null);
  }

  private static List<String> orElse(List<String> given, List<String> otherwise) {
    return given == null ? otherwise : given;
  }

  /** Every defect, and whatever else a call for the vet, the choice or a bar rests on. */
  private List<String> findings() {
    Set<String> deciding = new LinkedHashSet<>();
    foot.referrals().forEach(one -> add(one.because(), deciding));
    if (waits()) {
      return made(deciding);
    }
    foot.findings().stream().filter(FindingGiven::defect).forEach(one -> deciding.add(one.id()));
    foot.firstChoice().ifPresent(one -> add(one, Bearing.FOR, deciding));
    ruledOut().keySet().forEach(id -> add(judged(id), Bearing.RULES_OUT, deciding));
    return made(deciding);
  }

  private List<String> made(Set<String> deciding) {
    return foot.findings().stream().map(FindingGiven::id).filter(deciding::contains).toList();
  }

  /**
   * While the vet is called for now nothing is done, and nothing of the work belongs to the answer.
   */
  private boolean waits() {
    return foot.firstChoice().isEmpty() && foot.urgency().filter(Urgency.NOW::equals).isPresent();
  }

  private static void add(OptionAdvice judged, Bearing bearing, Set<String> to) {
    for (ReasonGiven reason : judged.reasons()) {
      if (reason.bearing() == bearing) {
        add(reason.because(), to);
      }
    }
  }

  private static void add(List<CitedFact> because, Set<String> to) {
    for (CitedFact fact : because) {
      if (fact instanceof Finding finding) {
        to.add(finding.what());
      }
    }
  }

  /** The reasons for the first choice; without one, the calls for the vet that stand in its way. */
  private List<String> because() {
    if (foot.firstChoice().isPresent()) {
      return rules(foot.firstChoice().get(), Bearing.FOR);
    }
    return foot.referrals().stream()
        .filter(one -> one.urgency().compareTo(Urgency.TODAY) <= 0)
        .map(ReferralGiven::rule)
        .distinct()
        .toList();
  }

  private static List<String> rules(OptionAdvice judged, Bearing bearing) {
    return judged.reasons().stream()
        .filter(reason -> reason.bearing() == bearing)
        .map(ReasonGiven::rule)
        .distinct()
        .toList();
  }

  private Map<String, List<String>> ruledOut() {
    Map<String, List<String>> ruledOut = new LinkedHashMap<>();
    Stream<String> named =
        expected == null
            ? foot.techniques().stream()
                .filter(one -> one.verdict() == Verdict.RULED_OUT)
                .map(OptionAdvice::id)
            : expected.ruledOut().stream();
    named.forEach(id -> ruledOut.put(id, rules(judged(id), Bearing.RULES_OUT)));
    return ruledOut;
  }

  private OptionAdvice judged(String id) {
    return foot.technique(id) == null ? foot.support(id) : foot.technique(id);
  }

  /** Those that may be used and that nothing is said against, where a shoe or a cover goes on. */
  private List<String> supports(String first) {
    boolean shod = !List.of(Vocabulary.NONE, "leave-unshod", "leave-open").contains(first);
    boolean firstAid = advice.rulebook().firstAid(first);
    return foot.supports().stream()
        .filter(one -> shod && one.verdict() == Verdict.WORKABLE)
        .filter(one -> advice.rulebook().firstAid(one.id()) == firstAid)
        .filter(one -> rules(one, Bearing.AGAINST).isEmpty())
        .map(OptionAdvice::id)
        .toList();
  }

  /** Those that belong to the first choice or to any work. */
  private List<String> cautions(String first) {
    return foot.cautions().stream()
        .filter(one -> !waits())
        .filter(one -> one.techniques().isEmpty() || one.techniques().contains(first))
        .map(CautionGiven::id)
        .distinct()
        .toList();
  }

  /** What could call the vet at once; where nothing can be chosen, what keeps it from being so. */
  private List<String> ask() {
    boolean open = foot.firstChoice().isEmpty() && foot.urgency().isEmpty();
    Stream<Question> provisional = foot.questions().stream().filter(Question::provisional);
    Stream<Question> weighty =
        foot.questions().stream()
            .filter(one -> open && one.worth().compareTo(QuestionValue.VERDICT) <= 0)
            .limit(MOST_QUESTIONS);
    return Stream.concat(provisional, weighty).map(Question::field).distinct().toList();
  }

  /** The interval of the job sheet of the first choice, in days; null where there is none. */
  private Double nextVisit(String first) {
    Technique technique = Technique.of(first);
    if (technique == null) {
      return null;
    }
    Plan plan = PlanMaker.plan(advice, foot, technique, NO_WISHES);
    return plan.interval() == null || !plan.interval().known() ? null : plan.interval().value();
  }
}
