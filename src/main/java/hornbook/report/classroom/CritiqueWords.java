package hornbook.report.classroom;

import hornbook.advice.condition.ConditionState;
import hornbook.advice.fact.Truth;
import hornbook.assessment.quantity.Units;
import hornbook.report.words.Citations;
import hornbook.report.words.FieldNames;
import hornbook.report.words.ObservedText;
import hornbook.report.words.Phrases;
import hornbook.report.words.PlainWords;
import hornbook.report.words.RuleWords;
import hornbook.report.words.Sentence;
import hornbook.rulebook.Condition;
import hornbook.rulebook.NamedOption;
import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.Subjects;
import hornbook.rulebook.fact.CitedFact;
import hornbook.rulebook.fact.Limit;
import hornbook.study.critique.About;
import hornbook.study.critique.Evidence;
import hornbook.study.critique.Point;
import hornbook.study.exercise.Vocabulary;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/** The facts, rules and names of a critique in words of the trade. */
final class CritiqueWords {
  private static final int MOST_FACTS = 4;

  private final Rulebook book;
  private final Phrases phrases;
  private final ObservedText observed;
  private final RuleWords rules;
  private final Citations citations;

  CritiqueWords(Rulebook book, Units units) {
    this.book = book;
    this.phrases = new Phrases(book, units);
    this.observed = new ObservedText(phrases);
    this.rules = new RuleWords(book, phrases);
    this.citations = new Citations(book);
  }

  Phrases phrases() {
    return phrases;
  }

  /** What a point is about, by its name in the trade. */
  String name(Point point) {
    return name(point.about(), point.subject());
  }

  String name(About about, String subject) {
    return switch (about) {
      case TECHNIQUE, SUPPORT, RULED_OUT -> option(subject);
      case FINDING -> book.findings().get(subject).label();
      case REASON -> title(subject);
      case QUESTION -> FieldNames.of(subject);
      case NEXT_VISIT -> phrases.amounts().text(Double.parseDouble(subject), "days");
      case VET -> vet(subject);
      case CAUTION -> PlainWords.of(subject);
    };
  }

  /** How soon, or for what danger. */
  private static String vet(String subject) {
    return switch (subject) {
      case Vocabulary.NONE -> "no vet";
      case "mention" -> "a mention to the vet";
      case "days" -> "the vet within days";
      case "today" -> "the vet today";
      case "now" -> "the vet now";
      default -> PlainWords.of(subject);
    };
  }

  /** A technique or a support, or nothing. */
  String option(String id) {
    if (Vocabulary.NONE.equals(id)) {
      return "nothing today";
    }
    NamedOption technique = book.technique(id);
    return technique == null ? book.support(id).label() : technique.label();
  }

  /** {@code Too few nails find sound wall in a branch (N003)}. */
  String title(String rule) {
    RuleEntry entry = book.rules().get(rule);
    return entry == null ? rule : entry.title() + " (" + rule + ")";
  }

  /** What on this foot bears on a point: the facts its rules rest on; empty where none is known. */
  String bears(Point point) {
    Set<String> facts = new LinkedHashSet<>();
    for (Evidence one : point.evidence()) {
      for (CitedFact fact : one.because()) {
        if (!(fact instanceof Limit)) {
          facts.add(observed.line(fact));
        }
      }
      if (!one.fired()) {
        one.silent().conditions().stream()
            .flatMap(state -> state.cited().stream())
            .filter(fact -> !(fact instanceof Limit))
            .forEach(fact -> facts.add(observed.line(fact)));
      }
    }
    List<String> few = facts.stream().limit(MOST_FACTS).toList();
    return String.join("; ", few);
  }

  /** What the weightiest rules behind a point say, each with its works and ground. */
  List<String> says(Point point, int most) {
    List<String> says = new ArrayList<>();
    for (Evidence one : point.evidence().stream().limit(most).toList()) {
      says.add(told(one));
    }
    int more = point.evidence().size() - most;
    if (more > 0) {
      says.add("and " + more + " more: hornbook why");
    }
    return says;
  }

  /** What a rule says of this foot, or why it is silent. */
  String told(Evidence one) {
    return one.fired() ? fired(one) : silent(one);
  }

  RuleEntry rule(String id) {
    return book.rules().get(id);
  }

  private String fired(Evidence one) {
    String text = Sentence.capital(phrases.grounded(one.says(), one.basis()));
    return text + " [" + one.rule() + cited(one) + "]";
  }

  private String cited(Evidence one) {
    List<String> works = citations.brief(one.sources());
    return works.isEmpty() ? "" : "; " + String.join("; ", works);
  }

  /** What keeps a rule silent on this foot. */
  private String silent(Evidence one) {
    RuleEntry rule = one.silent().rule();
    String obstacle = one.silent().obstacle().map(state -> obstacle(rule, state)).orElse("");
    return title(rule.id())
        + " does not apply here"
        + (obstacle.isEmpty() ? "" : ": " + obstacle)
        + ".";
  }

  private String obstacle(RuleEntry rule, ConditionState state) {
    String asked = asked(rule, state);
    if (state.truth() == Truth.UNKNOWN) {
      return "it needs " + asked + ", and that was not looked at";
    }
    List<String> facts =
        state.cited().stream()
            .filter(fact -> !(fact instanceof Limit))
            .map(observed::line)
            .toList();
    String found = facts.isEmpty() ? "not found" : String.join("; ", facts);
    return "it needs " + asked + "; here: " + found;
  }

  private String asked(RuleEntry rule, ConditionState state) {
    int at = 0;
    List<String> lines = rules.conditions(rule);
    for (Condition condition : rule.conditions()) {
      if (condition == state.condition()) {
        return condition instanceof Condition.OfLimit limit
            ? "a foot for which the limit " + limit.id() + " holds"
            : lines.get(at);
      }
      at += condition instanceof Condition.OfLimit ? 0 : 1;
    }
    return Subjects.label(rule.title());
  }

  /** The work an author's view stands in. */
  String author(String source) {
    return citations.brief(source);
  }
}
