package hornbook.bench;

import hornbook.advice.Advice;
import hornbook.advice.engine.Advisor;
import hornbook.advice.fact.FactSheet;
import hornbook.advice.fact.FactSheets;
import hornbook.assessment.Assessment;
import hornbook.assessment.quantity.Units;
import hornbook.bench.twin.HandRules;
import hornbook.report.advice.AdviceJson;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** The parts of one advice, each on the exercises of one foot by turns. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class AdviceBenchmark {
  private final Advisor advisor = new Advisor(Feet.RULES);
  private final NailingAndReferral nailing = new NailingAndReferral(Feet.RULES.book());
  private final List<Assessment> assessments = new ArrayList<>();
  private final List<FactSheet> sheets = new ArrayList<>();
  private final List<Advice> advices = new ArrayList<>();
  private List<byte[]> lines;
  private int at;

  @Setup
  public void layOut() throws IOException {
    FactSheets laidOut = new FactSheets(Feet.RULES.book());
    lines = Feet.lines();
    for (byte[] line : lines) {
      Assessment assessment = Feet.read(line);
      assessments.add(assessment);
      sheets.add(laidOut.of(assessment, 0));
      advices.add(advisor.advise(assessment));
    }
  }

  private <T> T next(List<T> all) {
    at = at + 1 < all.size() ? at + 1 : 0;
    return all.get(at);
  }

  @Benchmark
  public Assessment read() {
    return Feet.read(next(lines));
  }

  @Benchmark
  public Advice evaluate() {
    return advisor.advise(next(assessments));
  }

  @Benchmark
  public Advice evaluateBriefly() {
    return advisor.brief(next(assessments));
  }

  @Benchmark
  public int write() throws IOException {
    ByteArrayOutputStream to = new ByteArrayOutputStream(1 << 16);
    AdviceJson.writeLine(next(advices), Units.MM, false, to);
    return to.size();
  }

  @Benchmark
  public int nailingByEngine() {
    return nailing.fired(next(sheets)).size();
  }

  @Benchmark
  public int nailingByHand() {
    return HandRules.of(next(sheets)).size();
  }
}
