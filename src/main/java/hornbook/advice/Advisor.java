package hornbook.advice;

import hornbook.assessment.Assessment;
import hornbook.assessment.VetRole;
import hornbook.rulebook.LoadedRules;
import hornbook.rulebook.Named;
import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.fact.Basis;
import hornbook.rulebook.fact.Bearing;
import hornbook.rulebook.fact.Cited;
import hornbook.rulebook.fact.Finding;
import hornbook.rulebook.fact.Limit;
import hornbook.rulebook.fact.Reading;
import hornbook.rulebook.fact.Reason;
import hornbook.rulebook.fact.Referral;
import hornbook.rulebook.fact.Urgency;
import hornbook.rulebook.reserve.Reserves;
import java.util.ArrayList;
import java.util.Comparator;
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
  private final Rulebook book;
  private final RuleEngine engine;
  private final FactSheets sheets;

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
    return advise(assessment, true);
  }

  /**
   * The same without the questions: for whoever asks thousands of times and only wants the
   * verdicts.
   */
  public Advice judge(Assessment assessment) {
    return advise(assessment, false);
  }

  /** Everything known of the foot at this place, as the rules meet it. */
  public FactSheet sheet(Assessment assessment, int foot) {
    return sheets.of(assessment, foot);
  }

  /** The advice on the foot at this place from its sheet, without the questions. */
  FootAdvice judge(Assessment assessment, int foot, FactSheet sheet) {
    return adviseFoot(assessment, foot, sheet, false);
  }

  private Advice advise(Assessment assessment, boolean asking) {
    List<FootAdvice> feet = new ArrayList<>();
    List<FactSheet> laidOut = sheets.of(assessment);
    for (int index = 0; index < laidOut.size(); index++) {
      feet.add(adviseFoot(assessment, index, laidOut.get(index), asking));
    }
    return new Advice(book, assessment, List.copyOf(feet));
  }

  private FootAdvice adviseFoot(Assessment assessment, int index, FactSheet sheet, boolean asking) {
    // Asked before the engine is: on a cold start it is still laying out the rules.
    List<Question> questions =
        asking ? Questions.of(book, sheet, assessment.visit().vet()) : List.of();
    List<Firing> firings = firstOfEachRule(engine.fire(sheet.facts()));
    Ground ground = new Ground(book, firings);
    List<ReferralGiven> referrals = referrals(firings, ground);
    Urgency urgency = referrals.isEmpty() ? null : referrals.get(0).urgency();
    List<FindingGiven> findings = findings(firings);
    Set<String> defects = new LinkedHashSet<>();
    findings.stream().filter(FindingGiven::defect).forEach(finding -> defects.add(finding.id()));
    boolean directs = assessment.visit().vet() == VetRole.DIRECTING;
    Verdicts verdicts = new Verdicts(urgency, directs, defects);
    Map<String, List<ReasonGiven>> reasons = reasons(sheet, firings, ground, referrals, directs);
    List<Judged> techniques = verdicts.withFirstChoice(judge(book.techniques(), verdicts, reasons));
    List<Judged> supports = judge(book.supports(), verdicts, reasons);
    return new FootAdvice(
        assessment.feet().get(index).limb(),
        index,
        questions.stream().anyMatch(Question::provisional),
        Measures.of(sheet, findings),
        findings,
        referrals,
        techniques,
        supports,
        Cautions.of(book, firings, only -> anyOpen(techniques, only)),
        questions,
        sheet,
        firings);
  }

  /** A rule that fires on two cracks says the same thing once. */
  private static List<Firing> firstOfEachRule(List<Firing> firings) {
    Map<String, Firing> first = new LinkedHashMap<>();
    firings.forEach(firing -> first.putIfAbsent(firing.rule(), firing));
    return List.copyOf(first.values());
  }

  private List<ReferralGiven> referrals(List<Firing> firings, Ground ground) {
    List<ReferralGiven> given = new ArrayList<>();
    for (Firing firing : firings) {
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
                ground.under(rule, referral.because())));
      }
    }
    return Dangers.toldOnce(given);
  }

  private List<FindingGiven> findings(List<Firing> firings) {
    Map<String, FindingGiven> given = new LinkedHashMap<>();
    for (Firing firing : firings) {
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
      List<Firing> firings,
      Ground ground,
      List<ReferralGiven> referrals,
      boolean vetDirects) {
    Map<String, List<ReasonGiven>> bySubject = new LinkedHashMap<>();
    for (Firing firing : firings) {
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
    for (Held held : sheet.held()) {
      ReasonGiven given = OtherFoot.reason(held);
      held.reserves().subjects().forEach(one -> add(bySubject, one, given));
    }
    return bySubject;
  }

  private static void add(
      Map<String, List<ReasonGiven>> bySubject, String subject, ReasonGiven given) {
    bySubject.computeIfAbsent(subject, key -> new ArrayList<>()).add(given);
  }

  private ReasonGiven given(
      FactSheet sheet,
      RuleEntry rule,
      Ground ground,
      Bearing bearing,
      List<Cited> because,
      HeldBack heldBack) {
    Cited observed = null;
    Limit limit = null;
    for (Cited fact : because) {
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

  private static List<Judged> judge(
      List<Named> subjects, Verdicts verdicts, Map<String, List<ReasonGiven>> reasons) {
    List<Judged> judged = new ArrayList<>();
    for (Named subject : subjects) {
      List<ReasonGiven> own = new ArrayList<>(reasons.getOrDefault(subject.id(), List.of()));
      own.sort(
          Comparator.comparing(ReasonGiven::bearing).reversed().thenComparing(ReasonGiven::rule));
      judged.add(new Judged(subject.id(), verdicts.verdict(own), List.copyOf(own)));
    }
    return judged;
  }

  /** Whether a caution belongs here: to any work, or to a technique that is open. */
  private static boolean anyOpen(List<Judged> techniques, List<String> only) {
    return only.isEmpty()
        || techniques.stream().anyMatch(one -> only.contains(one.id()) && one.verdict().open());
  }
}
