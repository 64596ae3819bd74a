package hornbook.report.classroom;

import hornbook.assessment.quantity.Units;
import hornbook.report.words.FieldNames;
import hornbook.report.words.Sentence;
import hornbook.rulebook.Rulebook;
import hornbook.study.contrast.Contrast;
import hornbook.study.critique.About;
import hornbook.study.critique.FootCritique;
import hornbook.study.critique.Point;
import hornbook.study.critique.PointVerdict;
import hornbook.study.exercise.Vocabulary;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Words a point as a tutor would: what bears on it, a question, then what follows. */
final class CritiqueTutor {
  private static final int FEW_RULES = 2;

  private final CritiqueWords words;
  private final FirstIf firstIf;

  /** Finds the smallest change that would make a technique the first choice. */
  interface FirstIf {
    Optional<Contrast> of(FootCritique foot, String technique);
  }

  CritiqueTutor(Rulebook book, Units units, FirstIf firstIf) {
    this.words = new CritiqueWords(book, units);
    this.firstIf = firstIf;
  }

  CritiqueWords words() {
    return words;
  }

  CritiqueItem item(FootCritique foot, Point point) {
    boolean there = point.verdict() == PointVerdict.AGREED;
    String bears = words.bears(point);
    return new CritiqueItem(
        point,
        lead(point),
        bears,
        there ? "" : asks(point, bears),
        says(foot, point),
        words.says(point, FEW_RULES));
  }

  private String lead(Point point) {
    String name = words.name(point);
    boolean how = point.about() == About.VET && point.wanted() != null;
    return switch (point.about()) {
      case VET -> how ? "How soon: " + name : "Vet for: " + name;
      case TECHNIQUE -> "Technique: " + name;
      case REASON -> "Reason: " + name;
      case RULED_OUT -> "Ruled out: " + name;
      case SUPPORT -> "Support: " + name;
      case FINDING -> "Found: " + name;
      case CAUTION -> "Caution: " + name;
      case QUESTION -> "Still to look at: " + name;
      case NEXT_VISIT -> "Next visit: " + name;
    };
  }

  private String asks(Point point, String bears) {
    String name = words.name(point);
    String given = bears.isEmpty() ? "what you see" : "\"" + bears + "\"";
    boolean left =
        point.verdict() == PointVerdict.MISSED
            || point.verdict() == PointVerdict.MISSED_DANGEROUS
            || point.verdict() == PointVerdict.UNANSWERED;
    return switch (point.about()) {
      case VET ->
          point.wanted() != null
              ? "How long can a horse with " + given + " wait for the vet?"
              : left ? "What could lie behind " + given + "?" : "What shows " + name + " here?";
      case TECHNIQUE -> technique(point, name, given);
      case REASON ->
          left ? "Which rule makes the choice, given " + given + "?" : "Is that so on this foot?";
      case RULED_OUT ->
          left
              ? "What does " + given + " mean for " + name + "?"
              : "What would have to be so for " + name + " to be ruled out?";
      case SUPPORT ->
          left ? "What would help a foot with " + given + "?" : "What would " + name + " do here?";
      case FINDING ->
          left
              ? "What do you call it when a foot shows " + given + "?"
              : "What would you have to see to call it \"" + name + "\"?";
      case CAUTION ->
          left ? "What has to be watched with this work?" : "What on this foot calls for that?";
      case QUESTION ->
          left
              ? "What could change if you looked at: " + name + "?"
              : "Is " + name + " not known already, or could it still change anything?";
      case NEXT_VISIT -> "What grows, loosens or shifts by then?";
    };
  }

  private static String technique(Point point, String name, String given) {
    return switch (point.verdict()) {
      case DEFENSIBLE ->
          point.departs() == null
              ? "What would make it the first choice?"
              : "What will you do about " + given + "?";
      case RIGHT_FOR_ANOTHER_REASON -> "Which of your reasons holds on this foot?";
      case UNFOUNDED_DANGEROUS -> "What does " + given + " mean for " + name + "?";
      case UNFOUNDED -> "What on this foot supports " + name + "?";
      default -> "What may go on a foot with " + given + "?";
    };
  }

  private String says(FootCritique foot, Point point) {
    List<String> says = new ArrayList<>();
    switch (point.verdict()) {
      case MISSED_DANGEROUS ->
          says.add("Dangerous: " + wanted(point, "the horse could be harmed by waiting"));
      case UNFOUNDED_DANGEROUS -> says.add("Dangerous: not on this foot today.");
      case AGREED -> says.add("That holds.");
      case RIGHT_FOR_ANOTHER_REASON ->
          says.add(
              "The right answer, but none of the rules you named supports it on this foot. These do:");
      case UNFOUNDED -> says.add(wanted(point, "That does not hold on this foot"));
      case MISSED, UNANSWERED ->
          says.add(wanted(point, point.evidence().isEmpty() ? "It belongs to the answer" : ""));
      case DEFENSIBLE -> says.addAll(defensible(foot, point));
    }
    if (point.view() != null) {
      says.add(
          "Authors differ: "
              + words.author(point.view().source())
              + " would do the same. "
              + point.view().says());
    }
    return String.join(" ", says).strip();
  }

  /** What was wanted, where that is another word than the one answered. */
  private String wanted(Point point, String otherwise) {
    boolean other = point.wanted() != null && !point.wanted().equals(point.subject());
    boolean verdict = point.about() == About.RULED_OUT;
    if (!other || verdict) {
      return otherwise.isEmpty() ? "" : Sentence.capital(otherwise) + ".";
    }
    return "The answer is " + words.name(point.about(), point.wanted()) + ".";
  }

  private List<String> defensible(FootCritique foot, Point point) {
    List<String> says = new ArrayList<>();
    if (point.departs() != null) {
      says.add(
          "You depart from the advice and say why: \""
              + point.departs()
              + "\". That counts as a reason, not as wrong. The advice is against it:");
      return says;
    }
    boolean other = point.wanted() != null && !point.wanted().equals(point.subject());
    says.add("It can be defended.");
    if (other && point.about() == About.TECHNIQUE) {
      says.add("First choice is " + words.name(point.about(), point.wanted()) + ".");
      if (unsupported(foot, point)) {
        says.add("None of the rules you named supports it on this foot.");
      }
      firstIf.of(foot, point.subject()).ifPresent(one -> says.add(changed(point, one)));
    } else if (other && point.about() == About.VET) {
      String needed = words.name(point.about(), point.wanted());
      says.add("The rule base asks for " + needed + "; sooner is careful.");
    } else if (other && point.about() == About.RULED_OUT) {
      says.add("It is not ruled out, only " + point.wanted().replace('-', ' ') + ".");
    } else if (point.about() == About.VET && !point.subject().equals(Vocabulary.NONE)) {
      says.add("Nothing shows it, but not everything that could show it was looked at.");
    }
    return says;
  }

  /** A list without its brackets. */
  private static String bare(String written) {
    String words = written.replaceAll("[\\[\\]]", "");
    return words.isEmpty() ? Vocabulary.NONE : words;
  }

  private static boolean unsupported(FootCritique foot, Point point) {
    List<String> named = foot.answer().becauseRules();
    return !named.isEmpty() && named.stream().noneMatch(point.rules()::contains);
  }

  private String changed(Point point, Contrast contrast) {
    List<String> changes = new ArrayList<>();
    for (Contrast.Change change : contrast.changes()) {
      String name = FieldNames.of(change.what().path());
      changes.add(name + " " + bare(change.to()) + " instead of " + bare(change.from()));
    }
    boolean first =
        contrast.gives().stream()
            .anyMatch(one -> one.toFirstChoice() && one.id().equals(point.subject()));
    return (first ? "It would be first choice with: " : "It would come nearer with: ")
        + String.join("; ", changes)
        + ".";
  }
}
