package hornbook.cli.command;

import hornbook.advice.Advice;
import hornbook.advice.engine.Advisor;
import hornbook.cli.base.ArgumentValue;
import hornbook.cli.base.ExitCode;
import hornbook.cli.base.Failure;
import hornbook.cli.base.Surroundings;
import hornbook.cli.base.Task;
import hornbook.cli.option.FootOption;
import hornbook.cli.option.ListFormatOption;
import hornbook.cli.option.OneAssessment;
import hornbook.report.page.PageWidth;
import hornbook.report.page.TextOptions;
import hornbook.report.study.ExplanationJson;
import hornbook.report.study.ExplanationText;
import hornbook.report.words.Detail;
import hornbook.rulebook.Rulebook;
import hornbook.study.explain.Explainer;
import hornbook.study.explain.Explanation;
import hornbook.study.explain.Subject;
import hornbook.study.explain.SubjectNames;
import java.util.ArrayList;
import java.util.List;

/** Why something is so on a foot, or why it is not: {@code why} and {@code why-not}. */
public final class WhyCommand extends Task {
  private static final int MOST = 12;

  private final boolean not;
  private final ArgumentValue<String> file = OneAssessment.file(arguments);
  private final ArgumentValue<String> subject =
      arguments.operand(
          "SUBJECT",
          "a technique, support, referral, caution, finding, measure or rule, by id or name");
  private final FootOption foot = new FootOption(arguments);
  private final ArgumentValue<Boolean> full =
      arguments.flag("--full", "every step of the reasoning");
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

  public static Task why(Surroundings surroundings) {
    return new WhyCommand(
        surroundings,
        "why",
        false,
        "Why something is so: from the fields of the file to the verdict.");
  }

  public static Task whyNot(Surroundings surroundings) {
    return new WhyCommand(
        surroundings,
        "why-not",
        true,
        "Why something is not so: the first thing that failed, and how far off it was.");
  }

  @Override
  public ExitCode run() {
    var read = about.read(surroundings);
    List<Integer> feet = foot.of(read.assessment());
    Advisor advisor = about.advisor(surroundings);
    SubjectNames names = new SubjectNames(advisor.book());
    Subject asked = names.named(subject.value()).orElseGet(() -> meant(names));
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
    TextOptions options = new TextOptions(about.units(), detail, false, PageWidth.columns());
    return ExplanationText.render(all, book, options);
  }

  /** The one that the words fit. */
  private Subject meant(SubjectNames names) {
    List<Subject> meant = names.meant(subject.value());
    if (meant.isEmpty()) {
      throw unknown(names);
    }
    if (meant.size() > 1) {
      List<String> then = new ArrayList<>();
      for (Subject one : meant.subList(0, Math.min(MOST, meant.size()))) {
        then.add(one.kind().word() + ":" + one.id() + "  " + names.label(one));
      }
      if (meant.size() > MOST) {
        then.add("and " + (meant.size() - MOST) + " more");
      }
      throw Failure.usage(
          "\"" + subject.value() + "\" could be any of " + meant.size() + ": name one",
          then.toArray(String[]::new));
    }
    return meant.get(0);
  }

  private Failure unknown(SubjectNames names) {
    List<String> near = names.near(subject.value());
    return Failure.usage(
        "there is nothing by the name \"" + subject.value() + "\" to explain",
        near.isEmpty() ? "all rules: hornbook rules list" : "nearest: " + String.join(", ", near));
  }
}
