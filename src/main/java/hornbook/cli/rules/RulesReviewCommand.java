package hornbook.cli.rules;

import hornbook.assessment.tree.Fault;
import hornbook.cli.base.ArgumentValue;
import hornbook.cli.base.ExitCode;
import hornbook.cli.base.Failure;
import hornbook.cli.base.Surroundings;
import hornbook.cli.base.Task;
import hornbook.cli.file.FaultsFound;
import hornbook.cli.file.InputFile;
import hornbook.cli.option.OutputOption;
import hornbook.cli.option.PdfOption;
import hornbook.cli.option.RulesOption;
import hornbook.report.rules.ReviewPage;
import hornbook.report.rules.ReviewText;
import hornbook.rulebook.Rulebook;
import hornbook.study.review.Review;
import hornbook.study.review.ReviewAnswer;
import hornbook.study.review.ReviewSheet;
import hornbook.study.review.ReviewTally;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** Asks the trade about the limits, and reads what it answers. */
final class RulesReviewCommand extends Task {
  private enum Form {
    CSV,
    HTML,
    PDF,
    MARKDOWN
  }

  private static final String BLANK = "a blank questionnaire: hornbook rules review";

  private final ArgumentValue<Form> form =
      arguments.word(
          Form.class,
          Form.CSV,
          "for a spreadsheet, a page to print, a PDF, or Markdown",
          "--format");
  private final ArgumentValue<Boolean> reading =
      arguments.flag("--read", "read filled questionnaires (CSV); nothing is changed");
  private final ArgumentValue<List<String>> files =
      arguments.operands("FILE", "0..*", "filled questionnaires, with --read");
  private final RulesOption rules = new RulesOption(arguments);
  private final OutputOption output = new OutputOption(arguments);
  private final PdfOption pdf = new PdfOption(arguments, output);

  public RulesReviewCommand(Surroundings surroundings) {
    super(
        surroundings,
        "review",
        "A questionnaire on every limit, the weakest sources first; or the answers to it.",
        "",
        "Examples:",
        "  hornbook rules review --output limits.csv           for a spreadsheet",
        "  hornbook rules review --format html -o limits.html  to print",
        "  hornbook rules review --read anna.csv ben.csv       what they agree on",
        "");
  }

  @Override
  public ExitCode run() {
    boolean named = !files.value().isEmpty();
    if (named != reading.value()) {
      throw Failure.usage(
          named ? "files without --read" : "--read without a file",
          "to read what was answered: hornbook rules review --read FILE...");
    }
    output.spare(files.value());
    Rulebook book = rules.of(surroundings).book();
    boolean paper = form.value() == Form.PDF && !reading.value();
    pdf.only(paper);
    pdf.deliver(reading.value() ? answered(book) : blank(book), paper, surroundings);
    return ExitCode.DONE;
  }

  private String blank(Rulebook book) {
    return switch (form.value()) {
      case CSV -> ReviewSheet.blank(book);
      case HTML, PDF -> ReviewPage.html(book);
      case MARKDOWN -> ReviewPage.markdown(book);
    };
  }

  private String answered(Rulebook book) {
    List<ReviewAnswer> answers = new ArrayList<>();
    int people = 0;
    FaultsFound found = new FaultsFound(BLANK);
    for (String file : files.value()) {
      try {
        List<Fault> faults = new ArrayList<>();
        byte[] bytes = InputFile.read(file, BLANK, surroundings);
        List<ReviewAnswer> own = ReviewSheet.read(bytes, InputFile.shown(file), book, faults);
        people +=
            (int) own.stream().map(one -> one.name().toLowerCase(Locale.ROOT)).distinct().count();
        answers.addAll(own);
        if (!faults.isEmpty()) {
          found.in(faults);
        }
      } catch (Failure unread) {
        found.unread(unread);
      }
    }
    found.stopIfAny();
    List<ReviewTally> tallies = ReviewTally.of(Review.of(book), answers);
    return ReviewText.render(book, tallies, people);
  }
}
