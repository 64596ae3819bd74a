package hornbook.plan;

import hornbook.advice.Advice;
import hornbook.advice.CautionGiven;
import hornbook.advice.FootAdvice;
import hornbook.advice.OptionAdvice;
import hornbook.advice.ReferralGiven;
import hornbook.foot.shape.AddedMaterial;
import hornbook.plan.effect.FootNumbers;
import hornbook.plan.figure.Figure;
import hornbook.plan.sheet.ClockStep;
import hornbook.plan.sheet.Covered;
import hornbook.plan.sheet.GrowthDates;
import hornbook.plan.sheet.MissingMeasure;
import hornbook.plan.sheet.PlanWishes;
import hornbook.plan.sheet.PlannedClip;
import hornbook.plan.sheet.PlannedNail;
import hornbook.plan.sheet.SheetLine;
import hornbook.plan.sheet.SheetPart;
import hornbook.plan.sheet.ShoeSizes;
import hornbook.rulebook.fact.Limit;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;

/**
 * The job sheet for one technique on one foot. A sheet that is refused, or waits for the vet, has
 * no work in it.
 *
 * @param judged the technique with the advice's verdict and reasons
 * @param refused the technique and the supports that the advice rules out, unless the sheet is
 *     wanted despite that
 * @param stops the referrals that let nothing be done until the vet has come
 * @param lines what is to be done, part by part
 * @param before null in a sheet without work, as {@code after}, {@code growth} and {@code ground}
 * @param aboveNailExit null where there is no defect to grow out, as {@code ground}
 * @param added what is added to the foot; null in a sheet without work
 * @param covered where the wall is covered
 * @param interval days until the next visit
 * @param nextVisit null without a day of the visit
 */
public record Plan(
    Advice advice,
    FootAdvice foot,
    OptionAdvice judged,
    PlanWishes wishes,
    List<OptionAdvice> refused,
    List<ReferralGiven> stops,
    Map<SheetPart, List<SheetLine>> lines,
    List<PlannedNail> nails,
    List<PlannedClip> clips,
    FootNumbers before,
    FootNumbers after,
    AddedMaterial added,
    List<Covered> covered,
    ShoeSizes shoe,
    List<Figure> materials,
    List<ClockStep> steps,
    GrowthDates aboveNailExit,
    GrowthDates ground,
    Figure interval,
    LocalDate nextVisit,
    List<CautionGiven> cautions,
    List<MissingMeasure> missing) {

  /** Whether there is work in it. */
  public boolean workable() {
    return refused.isEmpty() && stops.isEmpty();
  }

  static Plan withoutWork(
      Advice advice,
      FootAdvice foot,
      OptionAdvice judged,
      PlanWishes wishes,
      List<OptionAdvice> refused,
      List<ReferralGiven> stops) {
    return new Plan(
        advice,
        foot,
        judged,
        wishes,
        refused,
        stops,
        Map.of(),
        List.of(),
        List.of(),
        null,
        null,
        null,
        List.of(),
        ShoeSizes.NONE,
        List.of(),
        List.of(),
        null,
        null,
        null,
        null,
        List.of(),
        List.of());
  }

  public List<SheetLine> lines(SheetPart part) {
    return lines.getOrDefault(part, List.of());
  }

  /** Every number that was reckoned, those that others rest on first. */
  public List<Figure> reckoned() {
    return figures().filter(one -> one.reckoned() && one.known()).distinct().toList();
  }

  /** Every limit of the trade that the sheet names or reckons with, each once. */
  public List<Limit> taken() {
    return figures().map(Figure::limit).filter(Objects::nonNull).distinct().toList();
  }

  private Stream<Figure> figures() {
    List<Figure> named = new ArrayList<>();
    lines.values().stream().flatMap(List::stream).forEach(line -> named.addAll(line.figures()));
    nails.forEach(nail -> named.addAll(List.of(nail.at(), nail.exit())));
    if (before != null) {
      named.addAll(before.all());
      named.addAll(after.all());
    }
    for (GrowthDates dates : Arrays.asList(aboveNailExit, ground)) {
      if (dates != null) {
        named.addAll(List.of(dates.fast(), dates.mean(), dates.slow()));
      }
    }
    named.addAll(materials);
    steps.forEach(step -> named.add(step.minutes()));
    return named.stream().flatMap(one -> one.origins().stream());
  }

  /** Keys of the works behind the sheet. */
  public Set<String> sources() {
    Set<String> sources = new LinkedHashSet<>();
    lines.values().stream().flatMap(List::stream).forEach(line -> sources.addAll(line.sources()));
    figures().forEach(one -> sources.addAll(one.sources()));
    steps.forEach(step -> sources.addAll(step.says().sources()));
    cautions.forEach(caution -> sources.addAll(caution.sources()));
    stops.forEach(stop -> sources.addAll(stop.sources()));
    judged.reasons().forEach(reason -> sources.addAll(reason.sources()));
    return sources;
  }

  /** Every call for the vet on the foot, the most urgent first. */
  public List<ReferralGiven> referrals() {
    return foot.referrals();
  }
}
