package hornbook.cli;

import hornbook.advice.Advisor;
import hornbook.assessment.Nearest;
import hornbook.assessment.ReadResult;
import hornbook.report.ContrastJson;
import hornbook.report.ContrastText;
import hornbook.report.Detail;
import hornbook.report.TextOptions;
import hornbook.rulebook.Named;
import hornbook.rulebook.Rulebook;
import hornbook.study.Contrasted;
import hornbook.study.Contrasts;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** The smallest changes to what was measured or seen that change the advice. */
final class ContrastCommand extends Task {
  private static final int WHOLE = 100;

  private final Value<String> file = OneAssessment.file(arguments);
  private final Value<String> to =
      arguments.text(
          "SUBJECT",
          "only what makes this technique the first choice, or this support workable",
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

  ContrastCommand(Surroundings surroundings) {
    super(
        surroundings,
        "contrast",
        "The smallest changes to what was measured or seen that change the advice.",
        "One thing, or two or three together; the nearest first, each tried.",
        "",
        "Examples:",
        "  hornbook contrast tansy.yaml",
        "  hornbook contrast tansy.yaml --foot left-fore --to nail-on",
        "");
  }

  @Override
  ExitCode run() {
    int wanted = (int) most.number();
    ReadResult.Good read = about.read(surroundings);
    List<Integer> feet = foot.of(read.assessment());
    Advisor advisor = about.advisor(surroundings);
    known(to.value(), advisor.book());
    List<Contrasted> all = contrasted(read, feet, wanted, advisor);
    TextOptions options =
        new TextOptions(about.units(), Detail.USUAL, false, TextOptions.USUAL_WIDTH);
    about.deliver(
        format.json()
            ? ContrastJson.of(all, advisor.book(), about.units())
            : ContrastText.render(all, advisor.book(), options),
        surroundings);
    return ExitCode.DONE;
  }

  private List<Contrasted> contrasted(
      ReadResult.Good read, List<Integer> feet, int wanted, Advisor advisor) {
    Contrasts contrasts = new Contrasts(advisor, about.units());
    Progress progress = Progress.of(surroundings, (long) WHOLE * feet.size());
    List<Contrasted> all = new ArrayList<>();
    try {
      for (int at : feet) {
        long before = (long) WHOLE * all.size();
        all.add(contrasts.of(read, at, to.value(), wanted, done -> progress.done(before + done)));
      }
    } finally {
      progress.end();
    }
    return all;
  }

  private static void known(String subject, Rulebook book) {
    if (subject != null && book.technique(subject) == null && book.support(subject) == null) {
      List<String> known =
          Stream.concat(book.techniques().stream(), book.supports().stream())
              .map(Named::id)
              .toList();
      String nearest = Nearest.of(subject, known);
      throw Failure.usage(
          "there is no technique or support " + subject,
          "known: " + String.join(", ", known),
          "nearest: " + (nearest == null ? "none of them" : nearest));
    }
  }
}
