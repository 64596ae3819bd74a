package hornbook.advice.question;

import hornbook.advice.Verdict;
import hornbook.advice.condition.RuleState;
import hornbook.advice.fact.Truth;
import hornbook.assessment.VetRole;
import hornbook.rulebook.Condition;
import hornbook.rulebook.NamedOption;
import hornbook.rulebook.RuleConclusion;
import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.fact.Bearing;
import hornbook.rulebook.fact.Urgency;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * All that may still become of a foot: the verdicts every technique and support may come to, the
 * techniques that may be first choice, what is told already for certain.
 */
public final class PossibleOutcomes {
  private final Rulebook book;
  private final Map<String, PossibleVerdicts> subjects = new HashMap<>();
  private final Map<String, Urgency> told = new HashMap<>();
  private final Map<String, Truth> found = new HashMap<>();
  private final Map<String, Map<String, Truth>> answers = new HashMap<>();
  private final Set<String> winners;
  private final Truth now;
  private final boolean elsewhere;
  private final Set<String> warned = new HashSet<>();

  /**
   * @param vet the vet's part in the case, null when unknown
   * @param held the rules whose calls on other feet hold something back on this one
   */
  public PossibleOutcomes(
      Rulebook book, Collection<RuleState> states, VetRole vet, Collection<RuleEntry> held) {
    this.book = book;
    book.techniques().forEach(one -> subjects.put(one.id(), new PossibleVerdicts()));
    book.supports().forEach(one -> subjects.put(one.id(), new PossibleVerdicts()));
    List<RuleEntry> warning = new ArrayList<>();
    Truth callNow = Truth.FALSE;
    Truth callToday = Truth.FALSE;
    for (RuleState state : states) {
      Truth truth = state.truth();
      RuleConclusion outcome = state.rule().outcome();
      if (truth == Truth.FALSE) {
        continue;
      }
      if (outcome instanceof RuleConclusion.Refers refers) {
        callNow = refers.urgency() == Urgency.NOW ? callNow.or(truth) : callNow;
        callToday = refers.urgency() == Urgency.TODAY ? callToday.or(truth) : callToday;
        if (refers.urgency() != Urgency.NOW) {
          holdBack(state.rule(), truth);
        }
        if (truth == Truth.TRUE) {
          told.merge(refers.id(), refers.urgency(), (a, b) -> a.compareTo(b) <= 0 ? a : b);
        }
      } else if (outcome instanceof RuleConclusion.Reasons reasons) {
        reasons.subjects().forEach(one -> subjects.get(one).add(reasons.bearing(), truth));
        answers(state.rule(), reasons, truth);
      } else if (outcome instanceof RuleConclusion.Finds finds) {
        found.merge(finds.finding(), truth, Truth::or);
      } else if (truth == Truth.TRUE) {
        warning.add(state.rule());
      }
    }
    held.forEach(rule -> holdBack(rule, Truth.TRUE));
    elsewhere = held.stream().anyMatch(rule -> rule.calls(Urgency.NOW)) && vet != VetRole.DIRECTING;
    now = callNow;
    Truth today = callToday;
    Truth directs = vet == null ? Truth.UNKNOWN : Truth.of(vet == VetRole.DIRECTING);
    subjects.forEach(
        (id, one) -> {
          boolean waits = !book.firstAid(id);
          one.settle(waits ? now : Truth.FALSE, waits ? today : Truth.FALSE, directs);
        });
    winners = winners();
    for (RuleEntry rule : warning) {
      if (certainlyOpen(rule.text().techniques())) {
        warned.add(((RuleConclusion.Cautions) rule.outcome()).id());
      }
    }
  }

  private void holdBack(RuleEntry rule, Truth truth) {
    for (String one : rule.text().reserves().subjects()) {
      subjects.get(one).add(Bearing.NEEDS_VET, truth);
    }
  }

  PossibleVerdicts of(String subject) {
    return subjects.get(subject);
  }

  /** How soon the vet is called for this danger for certain; null when that is open. */
  public Urgency told(String danger) {
    return told.get(danger);
  }

  /** How soon the vet is called for each danger that is certain. */
  public Map<String, Urgency> told() {
    return Map.copyOf(told);
  }

  /** The ids of the cautions that are given for certain. */
  public Set<String> warned() {
    return Set.copyOf(warned);
  }

  /**
   * The verdict on a technique or a support, where nothing that matters to it is unknown.
   *
   * @throws IllegalStateException when it is open
   */
  public Verdict verdict(String subject) {
    Verdict verdict = subjects.get(subject).verdict();
    boolean first = winners.contains(subject);
    if (first && winners.size() > 1) {
      throw new IllegalStateException("it is open which technique comes first");
    }
    return first ? Verdict.FIRST_CHOICE : verdict;
  }

  Truth found(String finding) {
    return found.getOrDefault(finding, Truth.FALSE);
  }

  /** Whether some referral is for now. */
  Truth now() {
    return now;
  }

  /** Whether it is open which technique is first choice, if any, and this may turn out to be it. */
  boolean mayComeFirst(String technique) {
    return winners.size() > 1 && winners.contains(technique);
  }

  boolean choiceOpen() {
    return winners.size() > 1;
  }

  /** Whether this caution is given for certain. */
  public boolean warned(String caution) {
    return warned.contains(caution);
  }

  private boolean certainlyOpen(List<String> techniques) {
    return techniques.isEmpty()
        || techniques.stream().anyMatch(one -> subjects.get(one).certainlyOpen());
  }

  /** Whether one of these techniques may still come into use; always where there are none. */
  boolean mayBeOpen(List<String> techniques) {
    return techniques.isEmpty()
        || techniques.stream().anyMatch(one -> subjects.get(one).mayBeOpen());
  }

  /** Notes that a reason for techniques answers the defects it cites. */
  private void answers(RuleEntry rule, RuleConclusion.Reasons reasons, Truth truth) {
    if (reasons.bearing() != Bearing.FOR) {
      return;
    }
    for (Condition condition : rule.conditions()) {
      if (condition instanceof Condition.OfFinding finding
          && reasons.cites().contains(finding.variable())
          && book.findings().get(finding.what()).defect()) {
        for (String subject : reasons.subjects()) {
          answers
              .computeIfAbsent(subject, key -> new HashMap<>())
              .merge(finding.what(), truth, Truth::or);
        }
      }
    }
  }

  /** Every technique that may be first choice; an empty text among them says: perhaps none. */
  private Set<String> winners() {
    Set<String> clean = new HashSet<>();
    Set<String> spokenAgainst = new HashSet<>();
    boolean none = true;
    boolean undecided = true;
    for (NamedOption technique : book.techniques()) {
      Truth candidate = candidate(technique.id());
      if (!undecided || candidate == Truth.FALSE) {
        continue;
      }
      Truth against = subjects.get(technique.id()).of(Bearing.AGAINST);
      if (against != Truth.TRUE) {
        clean.add(technique.id());
      }
      if (against != Truth.FALSE && none) {
        spokenAgainst.add(technique.id());
      }
      if (candidate == Truth.TRUE) {
        none = false;
        undecided = against != Truth.FALSE;
      }
    }
    if (now == Truth.TRUE || elsewhere) {
      return Set.of("");
    }
    Set<String> winners = new HashSet<>(clean);
    if (undecided) {
      winners.addAll(spokenAgainst);
    }
    if (none || now == Truth.UNKNOWN) {
      winners.add("");
    }
    return winners;
  }

  /** Whether the technique is workable and its reasons answer every defect. */
  private Truth candidate(String technique) {
    PossibleVerdicts prospect = subjects.get(technique);
    if (!prospect.may(Verdict.WORKABLE)) {
      return Truth.FALSE;
    }
    Truth all = prospect.settled() ? Truth.TRUE : Truth.UNKNOWN;
    if (book.firstAid(technique)) {
      return all;
    }
    Map<String, Truth> own = answers.getOrDefault(technique, Map.of());
    for (Map.Entry<String, Truth> one : found.entrySet()) {
      if (book.findings().get(one.getKey()).defect()) {
        Truth answered = own.getOrDefault(one.getKey(), Truth.FALSE);
        boolean certain = one.getValue() == Truth.TRUE || answered == Truth.TRUE;
        all = all.and(certain ? answered : Truth.UNKNOWN);
      }
    }
    return all;
  }
}
