package hornbook.study.exercise;

import hornbook.advice.CautionGiven;
import hornbook.advice.FindingGiven;
import hornbook.advice.FiredRule;
import hornbook.advice.FootAdvice;
import hornbook.advice.OptionAdvice;
import hornbook.advice.Question;
import hornbook.advice.Verdict;
import hornbook.advice.engine.Advisor;
import hornbook.assessment.Limb;
import hornbook.assessment.tree.Fault;
import hornbook.assessment.tree.FieldPath;
import hornbook.assessment.tree.LocatedValue;
import hornbook.assessment.tree.Place;
import hornbook.rulebook.fact.Urgency;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Whether what a case expects is what the rule base says of it, and its pair is one. */
public final class LibraryCheck {
  private static final String RULE_BASE = "what the rule base says: ";

  private final Advisor advisor;
  private final Map<String, Exercise> cases;

  public LibraryCheck(Advisor advisor, Map<String, Exercise> cases) {
    this.advisor = advisor;
    this.cases = cases;
  }

  /** Everything on which a case and the rule base do not agree. */
  public List<Fault> faults(Exercise one) {
    List<Fault> faults = new ArrayList<>();
    Map<Limb, FootAdvice> feet = feet(one);
    one.expected()
        .forEach((limb, expected) -> new OneFoot(one, feet.get(limb), expected, faults).check());
    for (OtherView view : one.differs()) {
      check(one, feet.get(view.foot()), view, faults);
    }
    if (one.pair() != null) {
      Exercise other = cases.get(one.pair());
      faults.addAll(new MinimalPair(one, other, advisor).faults());
      if (other != null && !one.name().equals(other.pair())) {
        faults.add(fault(one, "pair", one.pair(), "a case that names this one as its pair"));
      }
    }
    return faults;
  }

  private Map<Limb, FootAdvice> feet(Exercise one) {
    Map<Limb, FootAdvice> feet = new LinkedHashMap<>();
    advisor.advise(one.assessment()).feet().forEach(foot -> feet.put(foot.limb(), foot));
    return feet;
  }

  /** An author who would choose as the rule base does differs in nothing. */
  private static void check(Exercise one, FootAdvice foot, OtherView view, List<Fault> faults) {
    String first = foot.firstChoice().map(OptionAdvice::id).orElse(Vocabulary.NONE);
    if (first.equals(view.technique())) {
      faults.add(fault(one, "differs", first, "another technique than the first choice"));
    }
    Expected expected = one.expected().get(view.foot());
    if (expected == null) {
      String allowed = "a foot under expected";
      faults.add(fault(one, "differs", view.foot().word(), allowed));
      return;
    }
    List<String> supports = expected.supports();
    if (view.without() != null && !supports.contains(view.without())) {
      String allowed = "a support of the model answer: " + String.join(", ", supports);
      faults.add(fault(one, "differs", view.without(), allowed));
    }
    if (forbidden(foot, view.technique()) || forbidden(foot, view.support())) {
      faults.add(fault(one, "differs", view.says(), "nothing that a call for the vet forbids"));
    }
    String vet = foot.urgency().map(Urgency::word).orElse(Vocabulary.NONE);
    if (vet.equals(view.vet())) {
      faults.add(fault(one, "differs", vet, "another urgency than that of the rule base"));
    }
  }

  private static boolean forbidden(FootAdvice foot, String id) {
    OptionAdvice judged = foot.technique(id) == null ? foot.support(id) : foot.technique(id);
    return judged != null && judged.reasons().stream().anyMatch(one -> one.heldBack() != null);
  }

  static Fault fault(Exercise one, String path, String found, String allowed) {
    LocatedValue at = one.read().caseFile().orElseThrow().whole().at(FieldPath.parse(path));
    Place place = at == null ? new Place(one.file(), 1, 1) : at.place();
    return new Fault(place.file(), place.line(), place.column(), path, found, allowed, null);
  }

  /** What is expected of one foot, compared with the advice on it. */
  private record OneFoot(Exercise of, FootAdvice foot, Expected expected, List<Fault> faults) {
    void check() {
      same("firstChoice", expected.firstChoice(), first());
      same("urgency", expected.urgency(), urgency());
      among("ruledOut", expected.ruledOut(), judged(Verdict.RULED_OUT));
      among("supports", expected.supports(), supports());
      among("findings", expected.findings(), foot.findings().stream().map(FindingGiven::id));
      among("because", expected.because(), foot.firings().stream().map(FiredRule::rule));
      among("cautions", expected.cautions(), foot.cautions().stream().map(CautionGiven::id));
      among("ask", expected.ask(), foot.questions().stream().map(Question::field));
    }

    private String first() {
      return foot.firstChoice().map(OptionAdvice::id).orElse(Vocabulary.NONE);
    }

    private String urgency() {
      return foot.urgency().map(Urgency::word).orElse(Vocabulary.NONE);
    }

    private Stream<String> judged(Verdict verdict) {
      return Stream.concat(foot.techniques().stream(), foot.supports().stream())
          .filter(one -> one.verdict() == verdict)
          .map(OptionAdvice::id);
    }

    private Stream<String> supports() {
      return foot.supports().stream()
          .filter(one -> one.verdict() == Verdict.WORKABLE)
          .map(OptionAdvice::id);
    }

    private String path(String key) {
      return "expected." + foot.limb().word() + "." + key;
    }

    private void same(String key, String found, String says) {
      if (!says.equals(found)) {
        faults.add(fault(of, path(key), found, RULE_BASE + says));
      }
    }

    private void among(String key, List<String> found, Stream<String> says) {
      List<String> known = says.distinct().toList();
      for (String one : found == null ? List.<String>of() : found) {
        if (!known.contains(one)) {
          faults.add(fault(of, path(key), one, RULE_BASE + String.join(", ", known)));
        }
      }
    }
  }
}
