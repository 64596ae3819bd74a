package hornbook.cli;

import hornbook.advice.Advice;
import hornbook.advice.Advisor;
import hornbook.report.Detail;
import hornbook.report.ExplanationJson;
import hornbook.report.ExplanationText;
import hornbook.report.TextOptions;
import hornbook.rulebook.Rulebook;
import hornbook.study.Explainer;
import hornbook.study.Explanation;
import hornbook.study.Subject;
import hornbook.study.SubjectNames;
import java.util.ArrayList;
import java.util.List;

/** Why something is so on a foot, or why it is not: {@code why} and {@code why-not}. */
final class WhyCommand extends Task {
  private final boolean not;
  private final Value<String> file = OneAssessment.file(arguments);
  private final Value<String> subject =
      arguments.operand(
          "SUBJECT", "a technique, support, referral, caution, finding, measure or rule by its id");
  private final FootOption foot = new FootOption(arguments);
  private final Value<Boolean> full = arguments.flag("--full", "the whole tree");
  private final ListFormatOption format = new ListFormatOption(arguments);
  private final OneAssessment about = new OneAssessment(arguments, file);

  private WhyCommand(Surroundings surroundings, String name, boolean not, String header) {
    super(
        surroundings,
        name,
        header,
        "",
        "Examples:",
        "  hornbook " + name + " tansy.yaml nail-on        a technique or a support",
        "  hornbook " + name + " tansy.yaml lameness       a call for the vet",
        "  hornbook " + name + " tansy.yaml low-heels      what was found",
        "  hornbook " + name + " tansy.yaml heelLength     a measure or a sign",
        "  hornbook " + name + " tansy.yaml N003 --full    a rule, all of it",
        "",
        "Where one name means several things, say which: measure:lameness.",
        "");
    this.not = not;
  }

  static Task why(Surroundings surroundings) {
    return new WhyCommand(
        surroundings,
        "why",
        false,
        "Why something is so: from the fields of the file to the verdict.");
  }

  static Task whyNot(Surroundings surroundings) {
    return new WhyCommand(
        surroundings,
        "why-not",
        true,
        "Why something is not so: the first thing that failed, and how far off it was.");
  }

  @Override
  ExitCode run() {
    var read = about.read(surroundings);
    List<Integer> feet = foot.of(read.assessment());
    Advisor advisor = about.advisor(surroundings);
    SubjectNames names = new SubjectNames(advisor.book());
    Subject asked = names.named(subject.value()).orElseThrow(() -> unknown(names));
    Advice advice = advisor.advise(read.assessment());
    List<Explanation> all = new ArrayList<>();
    for (int at : feet) {
      Explainer explainer = new Explainer(advice, advice.feet().get(at));
      all.add(not ? explainer.whyNot(asked) : explainer.why(asked));
    }
    about.deliver(told(all, advisor.book()), surroundings);
    return ExitCode.DONE;
  }

  private String told(List<Explanation> all, Rulebook book) {
    if (format.json()) {
      return ExplanationJson.of(all, book, about.units());
    }
    Detail detail = full.value() ? Detail.FULL : Detail.USUAL;
    TextOptions options = new TextOptions(about.units(), detail, false, TextOptions.USUAL_WIDTH);
    return ExplanationText.render(all, book, options);
  }

  private Failure unknown(SubjectNames names) {
    List<String> near = names.near(subject.value());
    return Failure.usage(
        "there is nothing by the name \"" + subject.value() + "\" to explain",
        near.isEmpty() ? "all rules: hornbook rules list" : "nearest: " + String.join(", ", near));
  }
}
