package hornbook.study.explain;

import hornbook.advice.Advice;
import hornbook.advice.FootAdvice;
import hornbook.advice.HeldBack;
import hornbook.advice.OptionAdvice;
import hornbook.advice.ReasonGiven;
import hornbook.advice.VerdictBasis;
import hornbook.assessment.Limb;
import hornbook.assessment.field.FieldValue;
import hornbook.rulebook.Condition;
import hornbook.rulebook.ReadingKind;
import hornbook.rulebook.RuleConclusion;
import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.fact.Bearing;
import hornbook.rulebook.fact.Reading;
import hornbook.rulebook.fact.Seen;
import hornbook.study.measure.RecordedFields;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;

/** Explains the advice on one foot. It never fails, whatever was looked at and whatever not. */
public final class Explainer {
  private final Advice advice;
  private final Rulebook book;
  private final FootAdvice foot;
  private final RuleChains chains;
  private final RecordedFields fields;

  /** Of other feet, as they come up: another foot may be why something waits on this one. */
  private final Map<Limb, RuleChains> others = new EnumMap<>(Limb.class);

  public Explainer(Advice advice, FootAdvice foot) {
    this.advice = advice;
    this.book = advice.rulebook();
    this.foot = foot;
    this.chains = new RuleChains(book, advice.assessment(), foot.sheet());
    this.fields = new RecordedFields(advice.assessment());
  }

  /** Why it is so. */
  public Explanation why(Subject subject) {
    return explain(subject, false);
  }

  /** Why it is not so. */
  public Explanation whyNot(Subject subject) {
    return explain(subject, true);
  }

  /** The chain of one rule. */
  public RuleChain chain(String rule) {
    return chains.of(rule);
  }

  /** The chain behind a reason, on the foot that gives it. */
  public RuleChain chain(ReasonGiven reason) {
    HeldBack held = reason.heldBack();
    boolean elsewhere = held != null && held.from() != null;
    return (elsewhere ? chains(held.from()) : chains).of(reason.rule());
  }

  private RuleChains chains(Limb limb) {
    return others.computeIfAbsent(
        limb,
        any ->
            advice.feet().stream()
                .filter(other -> other.limb() == limb)
                .findFirst()
                .map(other -> new RuleChains(book, advice.assessment(), other.sheet()))
                .orElseThrow());
  }

  private Explanation explain(Subject subject, boolean whyNot) {
    return switch (subject.kind()) {
      case RULE -> rule(subject, whyNot);
      case TECHNIQUE -> judgement(subject, whyNot, foot.technique(subject.id()));
      case SUPPORT -> judgement(subject, whyNot, foot.support(subject.id()));
      case REFERRAL -> given(subject, whyNot, rule -> calls(rule, subject.id()));
      case CAUTION -> caution(subject, whyNot);
      case FINDING -> given(subject, whyNot, rule -> RuleChains.makes(rule, subject.id()));
      case MEASURE -> measure(subject, whyNot);
    };
  }

  private Explanation rule(Subject subject, boolean whyNot) {
    RuleChain chain = chains.of(subject.id());
    Answer answer = new Answer.Given(chain.fired(), List.of());
    return new Explanation(subject, whyNot, foot, answer, List.of(chain), List.of(), List.of());
  }

  private static boolean calls(RuleEntry rule, String referral) {
    return rule.outcome() instanceof RuleConclusion.Refers refers && refers.id().equals(referral);
  }

  /** What one of several rules gives: they fired, or every one of them is silent for a reason. */
  private Explanation given(Subject subject, boolean whyNot, Predicate<RuleEntry> gives) {
    List<RuleChain> all = chains.of(gives);
    boolean given = all.stream().anyMatch(RuleChain::fired);
    List<RuleChain> deciding = all.stream().filter(chain -> chain.fired() == given).toList();
    List<RuleChain> silent = all.stream().filter(chain -> !deciding.contains(chain)).toList();
    Answer answer = new Answer.Given(given, List.of());
    return new Explanation(
        subject, whyNot, foot, answer, told(deciding), ledTo(subject, given), silent);
  }

  /** Of the rules that call for one danger, the one whose words are told comes first. */
  private List<RuleChain> told(List<RuleChain> chains) {
    List<RuleChain> told = new ArrayList<>();
    Set<String> rules = new LinkedHashSet<>();
    foot.referrals().forEach(referral -> rules.add(referral.rule()));
    chains.stream().filter(chain -> rules.contains(chain.rule().id())).forEach(told::add);
    chains.stream().filter(chain -> !told.contains(chain)).forEach(told::add);
    return told;
  }

  /** What a finding led to. */
  private List<RuleChain> ledTo(Subject subject, boolean given) {
    if (subject.kind() != Subject.Kind.FINDING || !given) {
      return List.of();
    }
    return chains.of(rule -> buildsOn(rule, subject.id())).stream()
        .filter(RuleChain::fired)
        .toList();
  }

  private static boolean buildsOn(RuleEntry rule, String finding) {
    return rule.conditions().stream()
        .anyMatch(
            condition ->
                condition instanceof Condition.OfFinding found && found.what().equals(finding));
  }

  private Explanation caution(Subject subject, boolean whyNot) {
    Explanation plain = given(subject, whyNot, rule -> warns(rule, subject.id()));
    boolean shown = foot.cautions().stream().anyMatch(one -> one.id().equals(subject.id()));
    boolean fired = ((Answer.Given) plain.answer()).given();
    if (shown || !fired) {
      return plain;
    }
    Set<String> closed = new LinkedHashSet<>();
    plain.deciding().forEach(chain -> closed.addAll(chain.rule().text().techniques()));
    Answer answer = new Answer.Given(false, List.copyOf(closed));
    return new Explanation(
        subject, whyNot, foot, answer, plain.deciding(), plain.further(), plain.silent());
  }

  private static boolean warns(RuleEntry rule, String caution) {
    return rule.outcome() instanceof RuleConclusion.Cautions cautions
        && cautions.id().equals(caution);
  }

  private Explanation judgement(Subject subject, boolean whyNot, OptionAdvice judged) {
    VerdictBasis settled = VerdictBasis.of(foot, judged);
    List<RuleChain> deciding = deciding(judged, settled, whyNot);
    List<RuleChain> fired = fired(judged.reasons());
    List<RuleChain> further = fired.stream().filter(one -> !deciding.contains(one)).toList();
    List<RuleChain> silent =
        chains.of(rule -> bearsOn(rule, judged.id(), null)).stream()
            .filter(chain -> !chain.fired() && !deciding.contains(chain))
            .toList();
    Answer answer = new Answer.Judgement(judged, settled);
    return new Explanation(subject, whyNot, foot, answer, deciding, further, silent);
  }

  private List<RuleChain> deciding(OptionAdvice judged, VerdictBasis settled, boolean whyNot) {
    return switch (settled.by()) {
      case RULED_OUT -> told(fired(with(judged, Bearing.RULES_OUT)));
      case VET_FIRST -> told(fired(with(judged, Bearing.NEEDS_VET)));
      case NOTHING_FOR -> silentFor(judged.id(), rule -> true);
      case COMES_FIRST, VET_AWAITED, MAY_BE_USED -> fired(with(judged, Bearing.FOR));
      case DEFECT_LEFT ->
          whyNot
              ? silentFor(
                  judged.id(),
                  rule -> settled.about().stream().anyMatch(one -> buildsOn(rule, one)))
              : fired(with(judged, Bearing.FOR));
      case SPOKEN_AGAINST -> fired(with(judged, whyNot ? Bearing.AGAINST : Bearing.FOR));
      case ANOTHER_FIRST ->
          whyNot
              ? fired(with(foot.technique(settled.about().get(0)), Bearing.FOR))
              : fired(with(judged, Bearing.FOR));
    };
  }

  /** The rules that would support it, the nearest to firing first. */
  private List<RuleChain> silentFor(String id, Predicate<RuleEntry> which) {
    return chains.of(rule -> bearsOn(rule, id, Bearing.FOR) && which.test(rule)).stream()
        .filter(chain -> !chain.fired())
        .toList();
  }

  private static boolean bearsOn(RuleEntry rule, String id, Bearing bearing) {
    return rule.outcome() instanceof RuleConclusion.Reasons reasons
        && reasons.subjects().contains(id)
        && (bearing == null || reasons.bearing() == bearing);
  }

  private static List<ReasonGiven> with(OptionAdvice judged, Bearing bearing) {
    return judged.reasons().stream().filter(reason -> reason.bearing() == bearing).toList();
  }

  private List<RuleChain> fired(Collection<ReasonGiven> reasons) {
    return reasons.stream().map(this::chain).distinct().toList();
  }

  private Explanation measure(Subject subject, boolean whyNot) {
    String what = subject.id();
    Reading reading = foot.sheet().readings().get(what);
    List<Seen> seen = foot.sheet().seen().getOrDefault(what, List.of());
    Set<String> paths = new LinkedHashSet<>();
    if (reading != null) {
      paths.addAll(reading.fields());
    }
    seen.forEach(one -> paths.add(one.field()));
    paths.addAll(foot.sheet().unknown().getOrDefault(what, List.of()));
    List<FieldValue> noted = fields.of(paths);
    Set<String> whats = readFrom(what);
    List<RuleChain> asking = chains.of(rule -> asks(rule, whats));
    List<RuleChain> fired = asking.stream().filter(RuleChain::fired).toList();
    List<RuleChain> kept =
        asking.stream().filter(chain -> !chain.fired() && keptSilent(chain, whats)).toList();
    List<RuleChain> rest =
        asking.stream().filter(chain -> !chain.fired() && !kept.contains(chain)).toList();
    Answer answer = new Answer.Known(reading, seen, noted);
    if (whyNot || fired.isEmpty()) {
      return new Explanation(subject, whyNot, foot, answer, kept, fired, rest);
    }
    List<RuleChain> silent = asking.stream().filter(chain -> !chain.fired()).toList();
    return new Explanation(subject, false, foot, answer, fired, List.of(), silent);
  }

  /** A field, and the readings computed from it. */
  private static Set<String> readFrom(String what) {
    Set<String> whats = new LinkedHashSet<>();
    whats.add(what);
    for (ReadingKind kind : ReadingKind.values()) {
      if (kind.fields().stream().anyMatch(field -> field.endsWith("." + what))) {
        whats.add(kind.id());
      }
    }
    return whats;
  }

  private static boolean asks(RuleEntry rule, Set<String> whats) {
    return rule.conditions().stream().anyMatch(condition -> asks(condition, whats));
  }

  private static boolean asks(Condition condition, Set<String> whats) {
    return condition instanceof Condition.OfReading reading && whats.contains(reading.what())
        || condition instanceof Condition.OfSeen seen && whats.contains(seen.what());
  }

  private static boolean keptSilent(RuleChain chain, Set<String> whats) {
    return chain.obstacle().filter(link -> asks(link.condition(), whats)).isPresent();
  }
}
