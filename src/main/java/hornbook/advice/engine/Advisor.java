package hornbook.advice.engine;

import hornbook.advice.Advice;
import hornbook.advice.Closeness;
import hornbook.advice.DangerMerge;
import hornbook.advice.FindingGiven;
import hornbook.advice.FiredRule;
import hornbook.advice.FootAdvice;
import hornbook.advice.HeldBack;
import hornbook.advice.OptionAdvice;
import hornbook.advice.OtherFoot;
import hornbook.advice.Question;
import hornbook.advice.ReasonGiven;
import hornbook.advice.ReferralGiven;
import hornbook.advice.Verdicts;
import hornbook.advice.WeakestBasis;
import hornbook.advice.Wording;
import hornbook.advice.fact.FactSheet;
import hornbook.advice.fact.FactSheets;
import hornbook.advice.fact.Held;
import hornbook.advice.outcome.OtherFeet;
import hornbook.advice.question.Questions;
import hornbook.assessment.Assessment;
import hornbook.assessment.Limb;
import hornbook.assessment.VetRole;
import hornbook.rulebook.NamedOption;
import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.fact.Basis;
import hornbook.rulebook.fact.Bearing;
import hornbook.rulebook.fact.CitedFact;
import hornbook.rulebook.fact.Finding;
import hornbook.rulebook.fact.Limit;
import hornbook.rulebook.fact.Reading;
import hornbook.rulebook.fact.Reason;
import hornbook.rulebook.fact.Referral;
import hornbook.rulebook.fact.Urgency;
import hornbook.rulebook.load.LoadedRules;
import hornbook.rulebook.reserve.Reserves;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The pure middle of the program: an assessment in, advice out. No clock, no files, no chance; safe
 * to call from several threads and cheap to call ten thousand times.
 */
public final class Advisor {
  private static final Comparator<ReasonGiven> WEIGHTIEST =
      Comparator.comparing(ReasonGiven::bearing).reversed().thenComparing(ReasonGiven::rule);

  private final Rulebook book;
  private final RuleEngine engine;
  private final FactSheets sheets;

  /** Laid out only where something is asked: rules are often only fired. */
  private Questions questions;

  /** Laid out only where a horse has several feet to compare. */
  private OtherFeet otherFeet;

  /** What is made of all that was not looked at. */
  private enum Asking {
    EVERYTHING,
    WHETHER_PROVISIONAL,
    NOTHING
  }

  public Advisor(LoadedRules rules) {
    this.book = rules.book();
    this.engine = new RuleEngine(rules);
    this.sheets = new FactSheets(book);
  }

  public Rulebook book() {
    return book;
  }

  /** Advises on every foot of the assessment. */
  public Advice advise(Assessment assessment) {
    return advise(assessment, Asking.EVERYTHING);
  }

  /**
   * The same without the questions: for whoever asks thousands of times and only wants the
   * verdicts.
   */
  public Advice judge(Assessment assessment) {
    return advise(assessment, Asking.NOTHING);
  }

  /**
   * The same without the questions, but it is told whether the advice is provisional: for whoever
   * wants the verdicts and is told the truth about them.
   */
  public Advice brief(Assessment assessment) {
    return advise(assessment, Asking.WHETHER_PROVISIONAL);
  }

  /**
   * What the advice leaves open, foot by foot in the order of the assessment: the questions of
   * {@link #advise} without the advice, and without the engine.
   */
  public List<List<Question>> questions(Assessment assessment) {
    return sheets(assessment).stream()
        .map(sheet -> questions().of(sheet, assessment.visit().vet()))
        .toList();
  }

  /** Everything known of the foot at this place, as the rules meet it. */
  public FactSheet sheet(Assessment assessment, int foot) {
    return assessment.feet().size() < 2
        ? sheets.of(assessment, foot)
        : sheets(assessment).get(foot);
  }

  /** The sheets of all feet, each with what the others hold back on it. */
  public List<FactSheet> sheets(Assessment assessment) {
    List<FactSheet> own = sheets.of(assessment);
    return own.size() < 2 ? own : otherFeet().together(assessment, own);
  }

  /** What fires on each foot, in the order of the assessment, without the advice it leads to. */
  public List<List<FiredRule>> firings(Assessment assessment) {
    List<FactSheet> laidOut = sheets(assessment);
    RuleEngine.Ready rules = engine.ready(laidOut);
    return laidOut.stream().map(sheet -> firstOfEachRule(rules.fire(sheet))).toList();
  }

  private synchronized Questions questions() {
    if (questions == null) {
      questions = new Questions(book);
    }
    return questions;
  }

  private synchronized OtherFeet otherFeet() {
    if (otherFeet == null) {
      otherFeet = new OtherFeet(book);
    }
    return otherFeet;
  }

  /** The advice on the foot at this place from its sheet, without the questions. */
  public FootAdvice judge(Assessment assessment, int foot, FactSheet sheet) {
    List<FiredRule> firings = firstOfEachRule(engine.ready(List.of(sheet)).fire(sheet));
    Limb limb = assessment.feet().get(foot).limb();
    return adviseFoot(assessment, foot, sheet, Asking.NOTHING, List.of(), Map.of(limb, firings));
  }

  private Advice advise(Assessment assessment, Asking asking) {
    List<FactSheet> laidOut = sheets(assessment);
    RuleEngine.Ready rules = engine.ready(laidOut);
    // Asked before the engine is: on a cold start it is still laying out the rules.
    List<List<Question>> asked = new ArrayList<>();
    for (FactSheet sheet : laidOut) {
      asked.add(
          asking == Asking.EVERYTHING
              ? questions().of(sheet, assessment.visit().vet())
              : List.of());
    }
    Map<Limb, List<FiredRule>> firings = new EnumMap<>(Limb.class);
    for (int index = 0; index < laidOut.size(); index++) {
      Limb limb = assessment.feet().get(index).limb();
      firings.put(limb, firstOfEachRule(rules.fire(laidOut.get(index))));
    }
    List<FootAdvice> feet = new ArrayList<>();
    for (int index = 0; index < laidOut.size(); index++) {
      feet.add(
          adviseFoot(assessment, index, laidOut.get(index), asking, asked.get(index), firings));
    }
    return new Advice(book, assessment, List.copyOf(feet));
  }

  /**
   * @param all what fired on this foot, and on others where that is known
   */
  private FootAdvice adviseFoot(
      Assessment assessment,
      int index,
      FactSheet sheet,
      Asking asking,
      List<Question> asked,
      Map<Limb, List<FiredRule>> all) {
    List<FiredRule> firings = all.get(assessment.feet().get(index).limb());
    WeakestBasis ground = new WeakestBasis(book, firings);
    List<ReferralGiven> referrals = referrals(firings, ground);
    Urgency urgency = referrals.isEmpty() ? null : referrals.get(0).urgency();
    List<FindingGiven> findings = findings(firings);
    Set<String> defects = new LinkedHashSet<>();
    findings.stream().filter(FindingGiven::defect).forEach(finding -> defects.add(finding.id()));
    boolean directs = assessment.visit().vet() == VetRole.DIRECTING;
    Verdicts verdicts = new Verdicts(urgency, directs, defects, book::firstAid);
    if (!directs && sheet.held().stream().anyMatch(Held::now)) {
      verdicts = verdicts.withoutChoice();
    }
    Map<String, List<ReasonGiven>> reasons = reasons(sheet, firings, ground, referrals, directs);
    addHeld(reasons, sheet, all);
    List<OptionAdvice> techniques =
        verdicts.withFirstChoice(judge(book.techniques(), verdicts, reasons));
    List<OptionAdvice> supports = judge(book.supports(), verdicts, reasons);
    return new FootAdvice(
        assessment.feet().get(index).limb(),
        index,
        asking == Asking.WHETHER_PROVISIONAL
            ? questions().provisional(sheet)
            : asked.stream().anyMatch(Question::provisional),
        MeasureNames.of(sheet, findings),
        findings,
        referrals,
        techniques,
        supports,
        Cautions.of(book, firings, ground, only -> anyOpen(techniques, only)),
        asked,
        sheet,
        firings);
  }

  /** A rule that fires on two cracks says the same thing once. */
  private static List<FiredRule> firstOfEachRule(List<FiredRule> firings) {
    Map<String, FiredRule> first = new LinkedHashMap<>();
    firings.forEach(firing -> first.putIfAbsent(firing.rule(), firing));
    return List.copyOf(first.values());
  }

  private List<ReferralGiven> referrals(List<FiredRule> firings, WeakestBasis ground) {
    List<ReferralGiven> given = new ArrayList<>();
    for (FiredRule firing : firings) {
      if (firing.conclusion() instanceof Referral referral) {
        RuleEntry rule = book.rules().get(firing.rule());
        given.add(
            new ReferralGiven(
                referral.id(),
                referral.urgency(),
                Wording.says(rule, referral.because()),
                Wording.meanwhile(rule, referral.because()),
                rule.text().reserves(),
                rule.id(),
                referral.because(),
                Wording.sources(rule, referral.because()),
                ground.under(rule, referral.because()),
                rule.text().shown()));
      }
    }
    return DangerMerge.toldOnce(given);
  }

  private List<FindingGiven> findings(List<FiredRule> firings) {
    Map<String, FindingGiven> given = new LinkedHashMap<>();
    for (FiredRule firing : firings) {
      if (firing.conclusion() instanceof Finding finding) {
        RuleEntry rule = book.rules().get(firing.rule());
        given.putIfAbsent(
            finding.what(),
            new FindingGiven(
                finding.what(),
                book.findings().get(finding.what()).defect(),
                rule.id(),
                Wording.says(rule, finding.because()),
                finding.because(),
                Wording.sources(rule, finding.because())));
      }
    }
    return List.copyOf(given.values());
  }

  private Map<String, List<ReasonGiven>> reasons(
      FactSheet sheet,
      List<FiredRule> firings,
      WeakestBasis ground,
      List<ReferralGiven> referrals,
      boolean vetDirects) {
    Map<String, List<ReasonGiven>> bySubject = new LinkedHashMap<>();
    for (FiredRule firing : firings) {
      if (firing.conclusion() instanceof Reason reason) {
        RuleEntry rule = book.rules().get(firing.rule());
        ReasonGiven given = given(sheet, rule, ground, reason.bearing(), reason.because(), null);
        for (String subject : reason.subjects()) {
          bySubject.computeIfAbsent(subject, key -> new ArrayList<>()).add(given);
        }
      }
    }
    for (ReferralGiven referral : referrals) {
      boolean stops = referral.urgency() == Urgency.NOW && !vetDirects;
      RuleEntry rule = book.rules().get(referral.rule());
      Reserves reserves = referral.reserves();
      ReasonGiven given =
          given(
              sheet,
              rule,
              ground,
              stops ? Bearing.RULES_OUT : Bearing.NEEDS_VET,
              referral.because(),
              new HeldBack(reserves.until(), reserves.days(), null));
      reserves.subjects().forEach(one -> add(bySubject, one, given));
    }
    return bySubject;
  }

  /** The reasons that other feet give. */
  private void addHeld(
      Map<String, List<ReasonGiven>> bySubject, FactSheet sheet, Map<Limb, List<FiredRule>> all) {
    for (Held held : sheet.held()) {
      List<FiredRule> firings = all.getOrDefault(held.from(), List.of());
      Basis basis =
          firings.stream()
              .filter(firing -> firing.rule().equals(held.rule().id()))
              .findFirst()
              .map(
                  one ->
                      new WeakestBasis(book, firings)
                          .under(held.rule(), one.conclusion().because()))
              .orElse(held.rule().basis());
      ReasonGiven given = OtherFoot.reason(held, basis);
      held.reserves().subjects().forEach(one -> add(bySubject, one, given));
    }
  }

  private static void add(
      Map<String, List<ReasonGiven>> bySubject, String subject, ReasonGiven given) {
    bySubject.computeIfAbsent(subject, key -> new ArrayList<>()).add(given);
  }

  private ReasonGiven given(
      FactSheet sheet,
      RuleEntry rule,
      WeakestBasis ground,
      Bearing bearing,
      List<CitedFact> because,
      HeldBack heldBack) {
    CitedFact observed = null;
    Limit limit = null;
    for (CitedFact fact : because) {
      if (fact instanceof Limit one) {
        limit = limit == null ? one : limit;
      } else if (observed == null) {
        observed = fact;
      }
    }
    boolean close =
        limit != null
            && observed instanceof Reading reading
            && Closeness.close(sheet, reading, limit);
    Basis basis = ground.under(rule, because);
    return new ReasonGiven(
        bearing,
        rule.id(),
        Wording.says(rule, because),
        observed,
        limit,
        close,
        because,
        Wording.sources(rule, because),
        basis,
        heldBack);
  }

  private static List<OptionAdvice> judge(
      List<NamedOption> subjects, Verdicts verdicts, Map<String, List<ReasonGiven>> reasons) {
    List<OptionAdvice> judged = new ArrayList<>();
    for (NamedOption subject : subjects) {
      List<ReasonGiven> own = new ArrayList<>(reasons.getOrDefault(subject.id(), List.of()));
      own.sort(WEIGHTIEST);
      judged.add(
          new OptionAdvice(subject.id(), verdicts.verdict(subject.id(), own), List.copyOf(own)));
    }
    return judged;
  }

  /** Whether a caution belongs here: to any work, or to a technique that is open. */
  private static boolean anyOpen(List<OptionAdvice> techniques, List<String> only) {
    return only.isEmpty()
        || techniques.stream().anyMatch(one -> only.contains(one.id()) && one.verdict().open());
  }
}
