package hornbook.report.study;

import hornbook.advice.FootAdvice;
import hornbook.advice.Verdict;
import hornbook.assessment.field.FieldValue;
import hornbook.assessment.tree.FieldPath;
import hornbook.report.words.Amounts;
import hornbook.report.words.Numbers;
import hornbook.report.words.Phrases;
import hornbook.report.words.PlainWords;
import hornbook.report.words.RecordedText;
import hornbook.report.words.RuleWords;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.fact.Urgency;
import hornbook.study.contrast.Contrast;
import hornbook.study.contrast.Contrast.Change;
import hornbook.study.contrast.Observation;
import hornbook.study.contrast.OutcomeChange;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Says in plain words what a contrast changes, and what it gives. */
final class ContrastWords {
  /** The most techniques or supports named that turn alike. */
  private static final int MOST = 3;

  /** Nobody measures by more errors than this beside the truth. */
  private static final double SLIP = 5;

  private final FootAdvice foot;
  private final RuleWords words;
  private final Amounts amounts;
  private final RecordedText noted;

  ContrastWords(Rulebook book, Phrases phrases, FootAdvice foot) {
    this.foot = foot;
    this.words = new RuleWords(book, phrases);
    this.amounts = phrases.amounts();
    this.noted = new RecordedText(amounts);
  }

  /** {@code toe angle: 50.5°, not 48°}; several with {@code and} between them. */
  String changes(Contrast contrast) {
    return contrast.changes().stream().map(this::change).collect(Collectors.joining("; and "));
  }

  private String change(Change change) {
    Observation what = change.what();
    return name(what) + ": " + value(what, change.value()) + ", not " + value(what, what.noted());
  }

  private String value(Observation what, Object value) {
    return noted.value(new FieldValue(what.field(), what.path(), value));
  }

  /** A place where one stretch of wall ends and the next begins is named by the one that ends. */
  private String name(Observation what) {
    String path = what.path();
    List<FieldPath.Step> steps = FieldPath.parse(path).steps();
    boolean row = steps.size() > 3 && steps.get(3) instanceof FieldPath.Index;
    if (row) {
      int number = ((FieldPath.Index) steps.get(3)).number();
      return path.contains("].wall[")
          ? ofWall(PlainWords.of(foot.sheet().wall().get(number), amounts), what)
          : PlainWords.of(foot.sheet().cracks().get(number)) + ", " + what.field().label();
    }
    boolean ofPair =
        steps.get(1) instanceof FieldPath.Index index && index.number() != foot.index();
    return what.field().label() + (ofPair ? " of the other foot of the pair" : "");
  }

  private static String ofWall(String stretch, Observation what) {
    return switch (what.field().name()) {
      case "from" -> "start of the " + stretch;
      case "to" -> "end of the " + stretch;
      case "state" -> stretch;
      default -> stretch + ", " + what.field().label();
    };
  }

  /** {@code 2 measuring errors together}; what is far off is no slip. */
  static String off(Contrast contrast) {
    boolean far =
        contrast.changes().stream()
            .anyMatch(change -> change.what().tool() != null && change.errors() > SLIP);
    return off(contrast.errors())
        + (contrast.changes().size() > 1 ? " together" : "")
        + (far ? ": another foot, not a slip" : "");
  }

  /** {@code 1.25 measuring errors}. */
  static String off(double errors) {
    String number = Numbers.rounded(errors, 2);
    return number + " measuring error" + (number.equals("1") ? "" : "s");
  }

  /** What the advice would say, one line each: calls for the vet, the first choice, verdicts. */
  List<String> gives(Contrast contrast) {
    List<String> lines = new ArrayList<>();
    for (OutcomeChange turn : contrast.gives()) {
      if (turn.kind() == OutcomeChange.Kind.REFERRAL) {
        lines.add(call(turn));
      }
    }
    firstChoice(contrast, lines);
    List<OutcomeChange> judged =
        contrast.gives().stream()
            .filter(turn -> turn.kind() != OutcomeChange.Kind.REFERRAL)
            .toList();
    if (judged.size() > MOST && judged.stream().allMatch(ContrastWords::ruledOut)) {
      lines.add("every technique and support: ruled out");
      return lines;
    }
    Map<String, List<String>> alike = new LinkedHashMap<>();
    for (OutcomeChange turn : judged) {
      if (!told(turn)) {
        String how = spoken(turn.to()) + ", was " + spoken(turn.from());
        alike.computeIfAbsent(how, key -> new ArrayList<>()).add(words.labels(List.of(turn.id())));
      }
    }
    alike.forEach((how, labels) -> lines.add(few(labels) + ": " + how));
    return lines;
  }

  private static boolean ruledOut(OutcomeChange turn) {
    return turn.to().equals(Verdict.RULED_OUT.word());
  }

  private static String spoken(String verdict) {
    return verdict.equals(Verdict.WITH_VET.word()) ? "only with the vet" : PlainWords.of(verdict);
  }

  private static String call(OutcomeChange turn) {
    String danger = PlainWords.of(turn.id());
    if (turn.to().equals(OutcomeChange.NONE)) {
      return "no call for the vet for " + danger + ", was: " + soon(turn.from());
    }
    String was = turn.from().equals(OutcomeChange.NONE) ? "" : ", was: " + soon(turn.from());
    return "the vet " + soon(turn.to()) + " for " + danger + was;
  }

  /** Whether a call for the vet falls away or may wait longer. */
  static boolean callEases(Contrast contrast) {
    return contrast.gives().stream().anyMatch(OutcomeChange::easesCall);
  }

  private static String soon(String urgency) {
    for (Urgency one : Urgency.values()) {
      if (one.word().equals(urgency)) {
        return one == Urgency.MENTION ? "at the next chance" : RuleWords.soon(one);
      }
    }
    throw new IllegalArgumentException(urgency);
  }

  private void firstChoice(Contrast contrast, List<String> lines) {
    String from = null;
    String to = null;
    for (OutcomeChange turn : contrast.gives()) {
      from = turn.fromFirstChoice() ? words.labels(List.of(turn.id())) : from;
      to = turn.toFirstChoice() ? words.labels(List.of(turn.id())) : to;
    }
    if (from != null || to != null) {
      String then = to == null ? "no first choice" : "first choice: " + to;
      lines.add(then + ", was " + (from == null ? "none" : from));
    }
  }

  /** Whether the line about the first choice says it already. */
  private static boolean told(OutcomeChange turn) {
    return turn.toFirstChoice()
        || turn.fromFirstChoice() && turn.to().equals(Verdict.WORKABLE.word());
  }

  private static String few(List<String> labels) {
    if (labels.size() <= MOST + 1) {
      return String.join(", ", labels);
    }
    return String.join(", ", labels.subList(0, MOST)) + " and " + (labels.size() - MOST) + " more";
  }
}
