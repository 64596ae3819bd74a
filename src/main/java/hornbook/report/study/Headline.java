package hornbook.report.study;

import hornbook.advice.ReferralGiven;
import hornbook.advice.VerdictBasis;
import hornbook.advice.fact.Truth;
import hornbook.report.words.Phrases;
import hornbook.report.words.PlainWords;
import hornbook.report.words.RuleWords;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.Subjects;
import hornbook.rulebook.fact.CitedFact;
import hornbook.study.explain.Answer;
import hornbook.study.explain.Explanation;
import hornbook.study.explain.RuleChain;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** The answer to why or why not in one sentence. */
final class Headline {
  private final Rulebook book;
  private final Phrases phrases;
  private final RuleWords words;

  Headline(Rulebook book, Phrases phrases) {
    this.book = book;
    this.phrases = phrases;
    this.words = new RuleWords(book, phrases);
  }

  String of(Explanation explanation) {
    if (explanation.answer() instanceof Answer.Judgement judgement) {
      String label = words.labels(List.of(judgement.judged().id()));
      return label + " " + verdict(judgement, explanation);
    }
    if (explanation.answer() instanceof Answer.Known known) {
      return known(explanation.subject().id(), known);
    }
    return given(explanation, (Answer.Given) explanation.answer());
  }

  private String verdict(Answer.Judgement judgement, Explanation explanation) {
    VerdictBasis settled = judgement.settled();
    return switch (settled.by()) {
      case COMES_FIRST ->
          "is the first choice"
              + (explanation.whyNot() ? ", so there is no why not" : "")
              + ": it deals with every defect found and interferes least";
      case RULED_OUT -> "is ruled out";
      case VET_FIRST -> "needs the vet's agreement first";
      case NOTHING_FOR -> "is not indicated: nothing on this foot supports it";
      case DEFECT_LEFT ->
          "is workable, not the first choice: the reasons for it do not deal with "
              + findings(settled.about());
      case SPOKEN_AGAINST ->
          "is workable, not the first choice: there is a reason against it, and none against "
              + words.labels(settled.about());
      case ANOTHER_FIRST ->
          "is workable, not the first choice: "
              + words.labels(settled.about())
              + " serves and comes before it";
      case VET_AWAITED ->
          "may be done until the vet comes; nothing is the first choice while the vet"
              + " is called for now";
      case MAY_BE_USED -> "may be used" + (explanation.whyNot() ? ", so there is no why not" : "");
    };
  }

  private String given(Explanation explanation, Answer.Given given) {
    String id = explanation.subject().id();
    boolean yes = given.given();
    return switch (explanation.subject().kind()) {
      case RULE -> rule(explanation.deciding().get(0));
      case REFERRAL -> yes ? called(explanation) : "no call for the vet: " + PlainWords.of(id);
      case CAUTION ->
          (yes ? "warned of: " : "not warned of: ")
              + PlainWords.of(id)
              + (given.closedFor().isEmpty()
                  ? ""
                  : ", though the rule holds: it belongs to "
                      + words.labels(given.closedFor())
                      + ", and none of that is open on this foot");
      default -> (yes ? "found: " : unknown(explanation)) + findings(List.of(id));
    };
  }

  private static String unknown(Explanation explanation) {
    boolean open =
        explanation.deciding().stream().anyMatch(chain -> chain.truth() == Truth.UNKNOWN);
    return open ? "not known whether there is: " : "not found: ";
  }

  private String called(Explanation explanation) {
    String id = explanation.subject().id();
    for (ReferralGiven referral : explanation.foot().referrals()) {
      if (referral.id().equals(id)) {
        return "the vet is called " + RuleWords.soon(referral.urgency()) + ": " + PlainWords.of(id);
      }
    }
    return "the vet is called: " + PlainWords.of(id);
  }

  private static String rule(RuleChain chain) {
    String title = "\"" + chain.rule().title() + "\" (" + chain.rule().id() + ")";
    return switch (chain.truth()) {
      case TRUE -> title + " holds";
      case FALSE -> title + " does not hold";
      case UNKNOWN -> title + " stays silent: what it asks is not known";
    };
  }

  private String known(String what, Answer.Known known) {
    String label = Subjects.label(what);
    List<String> values = new ArrayList<>();
    if (known.reading() != null) {
      values.add(phrases.of(known.reading()));
    }
    known.seen().forEach(seen -> values.add(phrases.of((CitedFact) seen)));
    return values.isEmpty() ? label + " is not known" : label + ": " + String.join(" and ", values);
  }

  private String findings(List<String> ids) {
    return ids.stream()
        .map(id -> book.findings().get(id).label())
        .collect(Collectors.joining(", "));
  }
}
