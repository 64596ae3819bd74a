package hornbook.cli.command;

import hornbook.advice.Advice;
import hornbook.advice.engine.Advisor;
import hornbook.assessment.Assessment;
import hornbook.assessment.quantity.Units;
import hornbook.assessment.read.AssessmentReader;
import hornbook.assessment.read.ReadResult;
import hornbook.assessment.read.Setting;
import hornbook.assessment.tree.FileText;
import hornbook.cli.base.ArgumentValue;
import hornbook.cli.base.ExitCode;
import hornbook.cli.base.Failure;
import hornbook.cli.base.Progress;
import hornbook.cli.base.Surroundings;
import hornbook.cli.base.Task;
import hornbook.cli.file.InputFile;
import hornbook.cli.option.OutputOption;
import hornbook.cli.option.RulesOption;
import hornbook.cli.option.SetOption;
import hornbook.cli.option.UnitsOption;
import hornbook.cli.stream.LineStream;
import hornbook.report.advice.AdviceJson;
import hornbook.report.advice.FaultsJson;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.util.List;
import java.util.concurrent.atomic.AtomicLong;

/** Many assessments, one a line in; as many advices, one a line out, in the same order. */
public final class BatchCommand extends Task {
  private final ArgumentValue<String> file =
      arguments.operand("FILE", "assessments as JSON, one a line; - is standard input");
  private final OutputOption output = new OutputOption(arguments);
  private final UnitsOption units = new UnitsOption(arguments);
  private final ArgumentValue<Boolean> brief =
      arguments.flag(
          "--brief", "without measures, cautions, questions and reasons for what is not indicated");
  private final SetOption set = new SetOption(arguments);
  private final RulesOption rules = new RulesOption(arguments);

  public BatchCommand(Surroundings surroundings) {
    super(
        surroundings,
        "batch",
        "Advice on many feet: one assessment a line in, one advice a line out.",
        "Lines are JSON and come out in the order they went in. If a line is not a valid",
        "assessment, its faults come out in its place.",
        "",
        "Examples:",
        "  hornbook batch yard.ndjson --output advice.ndjson",
        "  zcat yards.ndjson.gz | hornbook batch --brief - | gzip > advice.ndjson.gz",
        "");
  }

  @Override
  public ExitCode run() {
    output.spare(List.of(file.value()));
    List<Setting> changes = set.settings();
    Units shown = units.units();
    boolean briefly = brief.value();
    Advisor advisor = new Advisor(rules.of(surroundings).loaded());
    AtomicLong faulty = new AtomicLong();
    LineStream.Work work =
        (line, to) -> {
          ReadResult read = AssessmentReader.read(line.bytes(), "line " + line.number(), changes);
          if (read instanceof ReadResult.Good good) {
            advise(advisor, good, briefly, shown, to);
          } else {
            faulty.incrementAndGet();
            FaultsJson.writeLine(line.number(), ((ReadResult.Faulty) read).faults(), to);
          }
        };
    int cores = Runtime.getRuntime().availableProcessors();
    LineStream lines = new LineStream(cores, FileText.LARGEST + 1, work);
    InputFile.Opened in = InputFile.open(file.value(), surroundings);
    boolean mixed = output.toScreen() && surroundings.terminal();
    Progress progress = Progress.of(surroundings, in.size(), !mixed);
    try (InputStream from = in.stream()) {
      output.stream(to -> lines.run(from, to, progress::done), surroundings);
    } catch (IOException unreadable) {
      throw InputFile.unreadable(InputFile.shown(file.value()));
    } finally {
      progress.end();
    }
    return told(faulty.get());
  }

  private static void advise(
      Advisor advisor, ReadResult.Good good, boolean briefly, Units units, OutputStream to)
      throws IOException {
    Assessment assessment = good.assessment();
    Advice advice = briefly ? advisor.brief(assessment) : advisor.advise(assessment);
    AdviceJson.writeLine(advice, units, briefly, to);
  }

  private ExitCode told(long faulty) {
    if (faulty == 0) {
      return ExitCode.DONE;
    }
    surroundings
        .err()
        .print(
            Failure.of(
                    ExitCode.INVALID_INPUT,
                    faulty == 1
                        ? "one line is not a valid assessment"
                        : faulty + " lines are not valid assessments",
                    "its faults stand in its place: look for " + FaultsJson.FORMAT)
                .text());
    return ExitCode.INVALID_INPUT;
  }
}
