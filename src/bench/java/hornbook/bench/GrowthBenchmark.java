package hornbook.bench;

import hornbook.advice.Advice;
import hornbook.advice.engine.Advisor;
import hornbook.advice.fact.FactSheet;
import hornbook.advice.fact.FactSheets;
import hornbook.assessment.Assessment;
import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.network.RuleNetworks;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;

/** How time grows with the number of rules, of stretches of wall and of feet. */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class GrowthBenchmark {
  /** A part of the rules: every so many hundredths of them. */
  @State(Scope.Thread)
  public static class Rules {
    @Param({"60", "120", "240", "480"})
    int rules;

    private final List<FactSheet> sheets = new ArrayList<>();
    private RuleNetworks networks;
    private int at;

    @Setup
    public void layOut() throws Exception {
      List<RuleEntry> all = new ArrayList<>(Feet.RULES.book().rules().values());
      List<RuleEntry> some = new ArrayList<>();
      for (int one = 0; one < rules; one++) {
        some.add(all.get(one * all.size() / rules));
      }
      networks = new RuleNetworks(some);
      FactSheets laidOut = new FactSheets(Feet.RULES.book());
      for (byte[] line : Feet.lines()) {
        sheets.add(laidOut.of(Feet.read(line), 0));
      }
    }
  }

  /** A foot with so many stretches. */
  @State(Scope.Thread)
  public static class Stretches {
    @Param({"2", "8", "20", "60"})
    int stretches;

    private final Advisor advisor = new Advisor(Feet.RULES);
    private Assessment foot;

    @Setup
    public void layOut() {
      foot = Feet.read(Feet.file(1, stretches));
    }
  }

  /** A horse with so many feet. */
  @State(Scope.Thread)
  public static class Horse {
    @Param({"1", "2", "3", "4"})
    int feet;

    private final Advisor advisor = new Advisor(Feet.RULES);
    private Assessment horse;

    @Setup
    public void layOut() {
      horse = Feet.read(Feet.file(feet, 8));
    }
  }

  @Benchmark
  public int rules(Rules of) {
    of.at = of.at + 1 < of.sheets.size() ? of.at + 1 : 0;
    FactSheet sheet = of.sheets.get(of.at);
    return of.networks.ready(sheet::observed, sheet.limits()).fire(sheet.observed()).size();
  }

  @Benchmark
  public Advice stretches(Stretches of) {
    return of.advisor.advise(of.foot);
  }

  @Benchmark
  public Advice feet(Horse of) {
    return of.advisor.advise(of.horse);
  }
}
