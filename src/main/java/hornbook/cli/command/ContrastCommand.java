package hornbook.cli.command;

import hornbook.advice.engine.Advisor;
import hornbook.assessment.read.ReadResult;
import hornbook.cli.base.ArgumentValue;
import hornbook.cli.base.ExitCode;
import hornbook.cli.base.Progress;
import hornbook.cli.base.Surroundings;
import hornbook.cli.base.Task;
import hornbook.cli.option.FootOption;
import hornbook.cli.option.ListFormatOption;
import hornbook.cli.option.NamedArgument;
import hornbook.cli.option.NumberOption;
import hornbook.cli.option.OneAssessment;
import hornbook.report.page.PageWidth;
import hornbook.report.page.TextOptions;
import hornbook.report.study.ContrastJson;
import hornbook.report.study.ContrastText;
import hornbook.report.words.Detail;
import hornbook.rulebook.NamedOption;
import hornbook.rulebook.Rulebook;
import hornbook.study.contrast.Contrasts;
import hornbook.study.contrast.FootContrasts;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** The smallest changes to what was measured or seen that change the advice. */
public final class ContrastCommand extends Task {
  private static final int WHOLE = 100;

  private final ArgumentValue<String> file = OneAssessment.file(arguments);
  private final ArgumentValue<String> to =
      arguments.text(
          "SUBJECT",
          "only what makes this technique the first choice, or this support workable; by id or"
              + " name",
          "--to");
  private final NumberOption most =
      new NumberOption(
          arguments,
          "--most",
          Contrasts.USUAL,
          1,
          Contrasts.MOST,
          "how many to show for each foot; usually " + Contrasts.USUAL);
  private final FootOption foot = new FootOption(arguments);
  private final ListFormatOption format = new ListFormatOption(arguments);
  private final OneAssessment about = new OneAssessment(arguments, file);

  public ContrastCommand(Surroundings surroundings) {
    super(
        surroundings,
        "contrast",
        "The smallest changes to what was measured or seen that change the advice.",
        "It changes one thing, or two or three together, and tries each change.",
        "",
        "Examples:",
        "  hornbook contrast tansy.yaml",
        "  hornbook contrast tansy.yaml --foot left-fore --to nail-on",
        "");
  }

  @Override
  public ExitCode run() {
    int wanted = (int) most.number();
    ReadResult.Good read = about.read(surroundings);
    List<Integer> feet = foot.of(read.assessment());
    Advisor advisor = about.advisor(surroundings);
    String wish = wanted(advisor.book());
    List<FootContrasts> all = contrasted(read, feet, wish, wanted, advisor);
    TextOptions options = new TextOptions(about.units(), Detail.USUAL, false, PageWidth.columns());
    about.deliver(
        format.json()
            ? ContrastJson.of(all, advisor.book(), about.units())
            : ContrastText.render(all, advisor.book(), options),
        surroundings);
    return ExitCode.DONE;
  }

  private List<FootContrasts> contrasted(
      ReadResult.Good read, List<Integer> feet, String wish, int wanted, Advisor advisor) {
    Contrasts contrasts = new Contrasts(advisor, about.units());
    Progress progress = Progress.of(surroundings, (long) WHOLE * feet.size());
    List<FootContrasts> all = new ArrayList<>();
    try {
      for (int at : feet) {
        long before = (long) WHOLE * all.size();
        all.add(contrasts.of(read, at, wish, wanted, done -> progress.done(before + done)));
      }
    } finally {
      progress.end();
    }
    return all;
  }

  /** The id of what is to become the first choice, or workable; null where nothing is named. */
  private String wanted(Rulebook book) {
    List<NamedOption> all =
        Stream.concat(book.techniques().stream(), book.supports().stream()).toList();
    return to.value() == null ? null : NamedArgument.id(to.value(), "technique or support", all);
  }
}
