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
import picocli.CommandLine.Model.CommandSpec;

/** Why something is so on a foot, or why it is not: {@code why} and {@code why-not}. */
final class WhyCommand implements Task {
  private final Surroundings surroundings;
  private final boolean not;
  private final Arguments arguments;
  private final Value<String> subject;
  private final FootOption foot;
  private final Value<Boolean> full;
  private final ListFormatOption format;
  private final OneAssessment about;

  private WhyCommand(Surroundings surroundings, boolean not) {
    this.surroundings = surroundings;
    this.not = not;
    String name = not ? "why-not" : "why";
    arguments =
        new Arguments(
            this,
            name,
            not
                ? "Why something is not so: the first thing that failed, and how far off it was."
                : "Why something is so: from the fields of the file to the verdict.",
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
    Value<String> file = OneAssessment.file(arguments);
    subject =
        arguments.operand(
            "SUBJECT",
            "a technique, support, referral, caution, finding, measure or rule by its id");
    foot = new FootOption(arguments);
    full = arguments.flag("--full", "the whole tree");
    format = new ListFormatOption(arguments);
    about = new OneAssessment(arguments, file);
  }

  static Task why(Surroundings surroundings) {
    return new WhyCommand(surroundings, false);
  }

  static Task whyNot(Surroundings surroundings) {
    return new WhyCommand(surroundings, true);
  }

  @Override
  public CommandSpec spec() {
    return arguments.spec();
  }

  @Override
  public ExitCode run() {
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
