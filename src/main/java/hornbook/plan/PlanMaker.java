package hornbook.plan;

import hornbook.advice.Advice;
import hornbook.advice.CautionGiven;
import hornbook.advice.FootAdvice;
import hornbook.advice.OptionAdvice;
import hornbook.advice.ReferralGiven;
import hornbook.advice.Verdict;
import hornbook.advice.WeakestBasis;
import hornbook.advice.engine.Cautions;
import hornbook.assessment.VetRole;
import hornbook.plan.effect.AddedDepths;
import hornbook.plan.effect.Effect;
import hornbook.plan.effect.FinishedFoot;
import hornbook.plan.effect.FootNumbers;
import hornbook.plan.figure.Figure;
import hornbook.plan.nailing.Nailing;
import hornbook.plan.sheet.PlanWishes;
import hornbook.plan.sheet.SheetDraft;
import hornbook.plan.sheet.ShoeSizes;
import hornbook.plan.sheet.Technique;
import hornbook.plan.time.Aftercare;
import hornbook.plan.time.Clock;
import hornbook.plan.time.Growing;
import hornbook.plan.work.Building;
import hornbook.plan.work.Covering;
import hornbook.plan.work.Dressing;
import hornbook.plan.work.FirstAid;
import hornbook.plan.work.Fitting;
import hornbook.plan.work.Preparing;
import hornbook.plan.work.ToHand;
import hornbook.rulebook.fact.Urgency;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;

/** Makes the job sheet: a pure function of advice, technique and wishes. */
public final class PlanMaker {
  private PlanMaker() {}

  /**
   * The sheet for a foot of the advice. While something on the horse is the vet's at once, it holds
   * only what to do until then, unless the technique is first aid; where the advice rules the
   * technique or a support out, only why, unless the wishes say why it is wanted all the same.
   */
  public static Plan plan(Advice advice, FootAdvice foot, Technique technique, PlanWishes wishes) {
    OptionAdvice judged = foot.technique(technique.id());
    boolean meanwhile = technique.firstAid() && judged.verdict().open();
    List<ReferralGiven> stops = meanwhile ? List.of() : stops(advice);
    if (!stops.isEmpty()) {
      return Plan.withoutWork(advice, foot, judged, wishes, List.of(), stops);
    }
    List<OptionAdvice> refused = refused(foot, judged, wishes);
    if (!refused.isEmpty()) {
      return Plan.withoutWork(advice, foot, judged, wishes, refused, List.of());
    }
    return work(new SheetDraft(advice, foot, technique, wishes), judged);
  }

  /**
   * The referrals that let nothing be done until the vet has come. A danger on any foot stops the
   * work on all: the horse has to stand on the others.
   */
  public static List<ReferralGiven> stops(Advice advice) {
    if (advice.assessment().visit().vet() == VetRole.DIRECTING) {
      return List.of();
    }
    return advice.feet().stream()
        .flatMap(foot -> foot.referrals().stream())
        .filter(referral -> referral.urgency() == Urgency.NOW)
        .toList();
  }

  private static List<OptionAdvice> refused(
      FootAdvice foot, OptionAdvice judged, PlanWishes wishes) {
    List<OptionAdvice> refused = new ArrayList<>();
    if (wishes.despite() == null) {
      refused.add(judged);
      wishes.supports().forEach(support -> refused.add(foot.support(support)));
      refused.removeIf(one -> one.verdict() != Verdict.RULED_OUT);
    }
    return refused;
  }

  private static Plan work(SheetDraft draft, OptionAdvice judged) {
    boolean firstAid = draft.technique().firstAid();
    Dressing dressing = new Dressing(draft);
    Nailing nailing = new Nailing(draft);
    Building building = new Building(draft);
    if (firstAid) {
      new FirstAid(draft).write();
    } else {
      dressing.write();
      new Preparing(draft).write();
      nailing.write();
      building.write(nailing.driven());
    }
    new ToHand(draft).write(nailing.driven());
    AddedDepths depths = AddedDepths.of(draft, building.thickness(), dressing.heelsDown());
    FootNumbers before = FootNumbers.before(draft);
    Figure laid = building.side();
    Fitting fitting = new Fitting(draft);
    Figure turned = FootNumbers.after(draft, depths, laid, null, null).toeAngle();
    Figure branch = fitting.branch(turned);
    FinishedFoot finished = new FinishedFoot(draft, depths, laid, branch, dressing.setBack());
    FootNumbers after = finished.numbers();
    ShoeSizes shoe = fitting.write(branch, before, after, nailing);
    Clock clock = new Clock(draft);
    if (!firstAid) {
      new Effect(draft, depths, before, after).write();
      clock.write(nailing.driven(), building.thickness());
    }
    Growing growing = new Growing(draft);
    growing.write(nailing.behind());
    new Aftercare(draft).write(growing, clock.full(), before, after, nailing.nails().size());
    return new Plan(
        draft.advice(),
        draft.foot(),
        judged,
        draft.wishes(),
        List.of(),
        List.of(),
        Collections.unmodifiableMap(new EnumMap<>(draft.lines())),
        nailing.nails(),
        nailing.clips(),
        before,
        after,
        finished.added(),
        Covering.of(draft),
        shoe,
        materials(building, nailing),
        clock.steps(),
        growing.aboveNailExit(),
        growing.ground(),
        growing.interval(),
        growing.nextVisit(),
        cautions(draft),
        draft.missing());
  }

  private static List<Figure> materials(Building building, Nailing nailing) {
    List<Figure> materials = new ArrayList<>(building.materials());
    materials.addAll(nailing.materials());
    return List.copyOf(materials);
  }

  /** Those of the foot, and those of the technique even where the advice had ruled it out. */
  private static List<CautionGiven> cautions(SheetDraft draft) {
    String technique = draft.technique().id();
    return Cautions.of(
        draft.advice().rulebook(),
        draft.foot().firings(),
        new WeakestBasis(draft.advice().rulebook(), draft.foot().firings()),
        techniques -> techniques.isEmpty() || techniques.contains(technique));
  }
}
