package hornbook.cli.command;

import hornbook.advice.Advice;
import hornbook.advice.FootAdvice;
import hornbook.advice.engine.Advisor;
import hornbook.assessment.Limb;
import hornbook.assessment.read.ReadResult;
import hornbook.cli.base.ArgumentValue;
import hornbook.cli.base.ExitCode;
import hornbook.cli.base.Failure;
import hornbook.cli.base.Surroundings;
import hornbook.cli.base.Task;
import hornbook.cli.option.NamedArgument;
import hornbook.cli.option.OneAssessment;
import hornbook.cli.option.PdfOption;
import hornbook.cli.option.PictureOption;
import hornbook.cli.option.WishOptions;
import hornbook.plan.Plan;
import hornbook.plan.PlanMaker;
import hornbook.plan.sheet.PlanWishes;
import hornbook.plan.sheet.Technique;
import hornbook.report.drawing.Drawings;
import hornbook.report.drawing.Picture;
import hornbook.report.sheet.PlanHtml;
import hornbook.report.sheet.PlanJson;
import hornbook.report.sheet.PlanMarkdown;
import hornbook.report.sheet.PlanRefusal;
import hornbook.report.sheet.PlanText;
import hornbook.report.words.Amounts;
import hornbook.report.words.Detail;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.fact.Urgency;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/** The job sheet for a technique on a foot. */
public final class PlanCommand extends Task {
  /** The forms there are. */
  enum Form {
    TEXT,
    JSON,
    HTML,
    PDF,
    SVG,
    MARKDOWN
  }

  private final ArgumentValue<String> file = OneAssessment.file(arguments);
  private final ArgumentValue<String> technique =
      arguments.text(
          "TECHNIQUE",
          "the technique, by id or name, such as glue-on or \"glued shoe\"",
          "--technique");
  private final ArgumentValue<Limb> foot =
      arguments.word(Limb.class, null, "the foot, if the file has several", "--foot");
  private final ArgumentValue<Boolean> brief =
      arguments.flag("--brief", "one page: what is particular to this foot, without the routine");
  private final WishOptions wishes = new WishOptions(arguments);
  private final ArgumentValue<Form> form =
      arguments.word(
          Form.class,
          Form.TEXT,
          "plain text, JSON, a page for the browser, a page on paper, one drawing, or Markdown",
          "--format");
  private final OneAssessment about = new OneAssessment(arguments, file);
  private final PictureOption picture = new PictureOption(arguments, Picture.SIDE);
  private final PdfOption pdf = new PdfOption(arguments, about.output());

  public PlanCommand(Surroundings surroundings) {
    super(
        surroundings,
        "plan",
        "The job sheet for a technique on one foot, in numbers.",
        "",
        "Examples:",
        "  hornbook plan tansy.yaml --technique glue-on",
        "  hornbook plan tansy.yaml --technique \"glued shoe\" --brief",
        "  hornbook plan tansy.yaml --technique cast-wrap --add 8mm --dip 22C",
        "  hornbook plan tansy.yaml --technique nail-on --foot left-fore --wedge 3deg",
        "  hornbook plan tansy.yaml --technique cast-wrap --target-ratio 2.5",
        "  hornbook plan tansy.yaml --technique glue-on --format pdf -o sheet.pdf",
        "  hornbook plan tansy.yaml --technique cast-wrap --format svg --picture side",
        "  hornbook plan tansy.yaml --technique nail-on --despite \"the vet wants it so\"",
        "");
  }

  @Override
  public ExitCode run() {
    Advisor advisor = about.advisor(surroundings);
    Technique chosen = technique(advisor.book());
    ReadResult.Good read = about.read(surroundings);
    PlanWishes wished = wishes.in(advisor.book());
    check(chosen, wished, advisor.book());
    Advice advice = advisor.advise(read.assessment());
    Plan plan = PlanMaker.plan(advice, foot(advice, chosen), chosen, wished);
    if (!plan.refused().isEmpty()) {
      List<String> why = new ArrayList<>(PlanRefusal.why(plan, about.units()));
      why.add("to print the sheet anyway, say why: --despite \"...\"");
      throw Failure.of(ExitCode.REFUSED, PlanRefusal.what(plan), why.toArray(String[]::new));
    }
    deliver(plan);
    return plan.workable() ? ExitCode.DONE : ExitCode.REFUSED;
  }

  /** The technique named; what no page lists is not asked of the rules. */
  private Technique technique(Rulebook book) {
    if (technique.value() == null) {
      List<String> then = new ArrayList<>(List.of("by id or by name:"));
      then.addAll(NamedArgument.lines(book.techniques()));
      throw Failure.usage("--technique is missing", then.toArray(String[]::new));
    }
    return Technique.of(NamedArgument.id(technique.value(), "technique", book.techniques()));
  }

  private static void check(Technique chosen, PlanWishes wished, Rulebook book) {
    boolean bare = !chosen.shod();
    if (bare && wished.add() != null) {
      throw Failure.usage("--add builds on a foot, and " + chosen.id() + " builds nothing");
    }
    boolean firstAid = wished.supports().stream().allMatch(book::firstAid);
    if (bare && !firstAid) {
      throw Failure.usage("--support goes with a shoe, and " + chosen.id() + " has none");
    }
  }

  /** The foot asked for; else the only one, or the only one on which the technique is open. */
  private FootAdvice foot(Advice advice, Technique chosen) {
    List<FootAdvice> feet = advice.feet();
    if (foot.value() != null) {
      return feet.stream()
          .filter(one -> one.limb() == foot.value())
          .findFirst()
          .orElseThrow(() -> choose("the file has no foot " + foot.value().word(), feet));
    }
    List<FootAdvice> open =
        feet.stream().filter(one -> one.technique(chosen.id()).verdict().open()).toList();
    if (feet.size() == 1 || open.size() == 1) {
      return feet.size() == 1 ? feet.get(0) : open.get(0);
    }
    if (PlanMaker.stops(advice).isEmpty()) {
      throw choose("the file has several feet", feet);
    }
    return endangered(feet);
  }

  /** With a danger on the horse the sheet is the same for every foot. */
  private static FootAdvice endangered(List<FootAdvice> feet) {
    return feet.stream()
        .min(Comparator.comparing(one -> one.urgency().orElse(Urgency.MENTION)))
        .orElseThrow();
  }

  private static Failure choose(String what, List<FootAdvice> feet) {
    String choices =
        feet.stream().map(one -> "--foot " + one.limb().word()).collect(Collectors.joining(", "));
    return Failure.usage(what, "say which: " + choices);
  }

  private void deliver(Plan plan) {
    picture.only(form.value() == Form.SVG);
    if (brief.value() && (form.value() == Form.JSON || form.value() == Form.SVG)) {
      throw Failure.usage("--brief is for a page to read", "leave --brief or --format out");
    }
    pdf.only(form.value() == Form.PDF);
    String result = rendered(plan);
    if (form.value() == Form.PDF) {
      pdf.deliver(result, surroundings);
    } else {
      about.deliver(result, surroundings);
    }
  }

  private String rendered(Plan plan) {
    Detail detail = brief.value() ? Detail.BRIEF : Detail.FULL;
    return switch (form.value()) {
      case TEXT -> PlanText.render(plan, about.units(), detail);
      case MARKDOWN -> PlanMarkdown.render(plan, about.units(), detail);
      case HTML, PDF -> PlanHtml.render(plan, about.units(), detail);
      case SVG -> picture.of(Drawings.of(plan, new Amounts(about.units())));
      case JSON -> json(plan);
    };
  }

  private String json(Plan plan) {
    StringWriter text = new StringWriter();
    try {
      PlanJson.write(plan, about.units(), text);
    } catch (IOException never) {
      throw new UncheckedIOException(never);
    }
    return text.toString();
  }
}
