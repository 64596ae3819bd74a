package hornbook.cli.command;

import hornbook.advice.engine.Advisor;
import hornbook.assessment.Assessment;
import hornbook.cli.base.ArgumentValue;
import hornbook.cli.base.ExitCode;
import hornbook.cli.base.Progress;
import hornbook.cli.base.Surroundings;
import hornbook.cli.base.Task;
import hornbook.cli.option.FootOption;
import hornbook.cli.option.ListFormatOption;
import hornbook.cli.option.NumberOption;
import hornbook.cli.option.OneAssessment;
import hornbook.report.page.PageWidth;
import hornbook.report.page.TextOptions;
import hornbook.report.study.ConfidenceJson;
import hornbook.report.study.ConfidenceText;
import hornbook.report.words.Detail;
import hornbook.study.confidence.Confidence;
import hornbook.study.confidence.ConfidenceAnalysis;
import java.util.ArrayList;
import java.util.List;

/** How steady the advice is under measuring error. */
public final class ConfidenceCommand extends Task {
  private static final long USUAL_SEED = 1;

  private final ArgumentValue<String> file = OneAssessment.file(arguments);
  private final FootOption foot = new FootOption(arguments);
  private final NumberOption runs =
      new NumberOption(
          arguments,
          "--runs",
          ConfidenceAnalysis.USUAL_RUNS,
          1,
          ConfidenceAnalysis.MOST_RUNS,
          "how many repeats; usually " + ConfidenceAnalysis.USUAL_RUNS);
  private final NumberOption seed =
      new NumberOption(
          arguments,
          "--seed",
          USUAL_SEED,
          Long.MIN_VALUE,
          Long.MAX_VALUE,
          "start of the random numbers: the same seed gives the same answer; usually "
              + USUAL_SEED);
  private final ListFormatOption format = new ListFormatOption(arguments);
  private final OneAssessment about = new OneAssessment(arguments, file);

  public ConfidenceCommand(Surroundings surroundings) {
    super(
        surroundings,
        "confidence",
        "How steady the advice is under measuring error.",
        "The program repeats the measurements many times, each with the error of its tool.",
        "The page also says which of them are worth taking again.",
        "",
        "Examples:",
        "  hornbook confidence tansy.yaml",
        "  hornbook confidence tansy.yaml --foot left-fore --runs 100000 --seed 7",
        "");
  }

  @Override
  public ExitCode run() {
    int wanted = (int) runs.number();
    long from = seed.number();
    Assessment assessment = about.read(surroundings).assessment();
    List<Integer> feet = foot.of(assessment);
    Advisor advisor = about.advisor(surroundings);
    ConfidenceAnalysis confidences =
        new ConfidenceAnalysis(advisor, Runtime.getRuntime().availableProcessors());
    Progress progress = Progress.of(surroundings, (long) wanted * feet.size());
    List<Confidence> all = new ArrayList<>();
    try {
      for (int at : feet) {
        long before = (long) wanted * all.size();
        all.add(confidences.of(assessment, at, wanted, from, done -> progress.done(before + done)));
      }
    } finally {
      progress.end();
    }
    TextOptions options = new TextOptions(about.units(), Detail.USUAL, false, PageWidth.columns());
    about.deliver(
        format.json()
            ? ConfidenceJson.of(all, advisor.book(), about.units())
            : ConfidenceText.render(all, advisor.book(), options),
        surroundings);
    return ExitCode.DONE;
  }
}
