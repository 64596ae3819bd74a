package hornbook.advice.question;

import hornbook.advice.Question;
import hornbook.advice.QuestionValue;
import hornbook.advice.condition.OpenRules;
import hornbook.advice.condition.RuleState;
import hornbook.advice.fact.FactSheet;
import hornbook.advice.fact.Held;
import hornbook.advice.fact.Truth;
import hornbook.assessment.VetRole;
import hornbook.rulebook.NamedOption;
import hornbook.rulebook.RuleConclusion;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.fact.Urgency;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;

/**
 * What was not looked at and could change the advice: for every rule that only the unknown keeps
 * silent, the fields that would settle it, with what that rule could still change. The worthiest
 * come first.
 */
public final class Questions {
  private static final String VET = "visit.vet";

  private static final PossibleChange LESS_URGENT =
      new PossibleChange(QuestionValue.MENTION, List.of("referral"), null);

  private final Rulebook book;
  private final OpenRules rules;

  /** The calls for the vet now and today alone. */
  private OpenRules urgent;

  public Questions(Rulebook book) {
    this.book = book;
    this.rules = new OpenRules(book);
  }

  private synchronized OpenRules urgent() {
    if (urgent == null) {
      urgent = new OpenRules(book, rule -> rule.calls(Urgency.TODAY));
    }
    return urgent;
  }

  /**
   * The questions a foot leaves open.
   *
   * @param vet the vet's part in the case, null when unknown
   */
  public List<Question> of(FactSheet sheet, VetRole vet) {
    List<RuleState> states = rules.on(sheet);
    PossibleOutcomes prospects =
        new PossibleOutcomes(book, states, vet, sheet.held().stream().map(Held::rule).toList());
    Map<String, Open> open = new LinkedHashMap<>();
    for (RuleState state : states) {
      if (state.truth() == Truth.UNKNOWN) {
        PossibleChange stake = PossibleChange.of(state.rule(), prospects, book);
        boolean told = stake.worth().changesAdvice();
        if (told || !(state.rule().outcome() instanceof RuleConclusion.Finds)) {
          Collection<String> unseen = state.unseen();
          for (String field : unseen) {
            open.computeIfAbsent(field, Open::new)
                .could(stake, state.rule().title(), unseen.size() == 1);
          }
        }
      }
    }
    if (vet == null && prospects.now() != Truth.FALSE) {
      open.computeIfAbsent(VET, Open::new)
          .could(ofAllOpen(book, prospects), "A vet who directs the work opens it", true);
    }
    for (String field : sheet.unknown().getOrDefault(FactSheet.TRIM, List.of())) {
      open.computeIfAbsent(field, Open::new)
          .could(ofTrim(book, prospects), "The trim may take the damage off", true);
    }
    for (String field : sheet.unknown().getOrDefault(FactSheet.EASE, List.of())) {
      open.computeIfAbsent(field, Open::new)
          .could(LESS_URGENT, "Pus that drains would make the call less urgent", true);
    }
    for (String field : sheet.unknown().getOrDefault(FactSheet.JUDGED, List.of())) {
      open.computeIfAbsent(field, Open::new)
          .could(LESS_URGENT, "What a vet has judged lately is not called in again", true);
    }
    return open.values().stream()
        .sorted(
            Comparator.comparing((Open one) -> one.worth)
                .thenComparing(one -> !one.alone)
                .thenComparing(one -> one.field))
        .map(Open::question)
        .toList();
  }

  /**
   * Whether some question is open that could bring a call for the vet now or today: what {@link
   * Question#provisional()} says of some question, without working out the questions.
   */
  public boolean provisional(FactSheet sheet) {
    Map<String, Urgency> told = new HashMap<>();
    List<RuleState> open = new ArrayList<>();
    for (RuleState state : urgent().on(sheet)) {
      RuleConclusion.Refers refers = (RuleConclusion.Refers) state.rule().outcome();
      if (state.truth() == Truth.TRUE) {
        told.merge(refers.id(), refers.urgency(), (a, b) -> a.compareTo(b) <= 0 ? a : b);
      } else if (state.truth() == Truth.UNKNOWN && !state.unseen().isEmpty()) {
        open.add(state);
      }
    }
    for (RuleState state : open) {
      RuleConclusion.Refers refers = (RuleConclusion.Refers) state.rule().outcome();
      Urgency already = told.get(refers.id());
      if (already == null || refers.urgency().compareTo(already) < 0) {
        return true;
      }
    }
    return false;
  }

  /** Damage that stays speaks on techniques, and where none is open on what to take care of. */
  private static PossibleChange ofTrim(Rulebook book, PossibleOutcomes prospects) {
    PossibleChange open = ofAllOpen(book, prospects);
    return open.worth().changesAdvice()
        ? open
        : new PossibleChange(QuestionValue.CAUTION, List.of("caution"), null);
  }

  /** What bears on every technique and support that may still be open. */
  private static PossibleChange ofAllOpen(Rulebook book, PossibleOutcomes prospects) {
    List<String> changes =
        Stream.concat(book.techniques().stream(), book.supports().stream())
            .map(NamedOption::id)
            .filter(one -> prospects.of(one).mayBeOpen())
            .toList();
    return new PossibleChange(
        changes.isEmpty() ? QuestionValue.MEASURE : QuestionValue.VERDICT, changes, null);
  }

  /** A field that is open, and what is known so far of what it could change. */
  private static final class Open {
    private final String field;
    private final Set<String> changes = new LinkedHashSet<>();
    private final List<String> titles = new ArrayList<>();
    private QuestionValue worth;
    private Urgency urgency;
    private boolean alone;

    Open(String field) {
      this.field = field;
    }

    void could(PossibleChange stake, String title, boolean byItself) {
      changes.addAll(stake.changes());
      Urgency own = stake.urgency();
      urgency = urgency == null || own != null && own.compareTo(urgency) < 0 ? own : urgency;
      if (worth == null || stake.worth().compareTo(worth) < 0) {
        worth = stake.worth();
        titles.add(0, title);
        alone = byItself;
      } else if (stake.worth() == worth && byItself && !alone) {
        titles.add(0, title);
        alone = true;
      }
    }

    Question question() {
      return new Question(field, titles.get(0), List.copyOf(changes), urgency, worth, alone);
    }
  }
}
