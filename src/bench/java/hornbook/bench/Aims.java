package hornbook.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import org.hipparchus.stat.regression.SimpleRegression;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;
import org.openjdk.jmh.runner.options.TimeValue;
import org.openjdk.jmh.runner.options.VerboseMode;

/** Measures all that is aimed at and prints each aim with today's figure. */
public final class Aims {
  private final Map<String, Double> micros = new TreeMap<>();

  private Aims() {}

  /** Takes the program's folder. */
  public static void main(String[] arguments)
      throws IOException, InterruptedException, RunnerException {
    Aims aims = new Aims();
    aims.parts();
    aims.growth();
    Path folder = Files.createTempDirectory("hornbook-benchmarks-");
    List<Aim> all = new ArrayList<>(new Starts(Path.of(arguments[0]), folder).aims());
    all.add(
        new Aim(
            "nailing and referral by the engine, times plain Java",
            true,
            8,
            "",
            aims.micros.get("nailingByEngine") / aims.micros.get("nailingByHand")));
    System.out.println();
    all.forEach(aim -> System.out.println(aim.line()));
    System.out.println();
    System.out.println(all.stream().filter(Aim::met).count() + " of " + all.size() + " met");
  }

  private static Collection<RunResult> run(Class<?> benchmarks) throws RunnerException {
    return new Runner(
            new OptionsBuilder()
                .include(benchmarks.getName() + "\\.")
                .forks(1)
                .jvmArgs("-Xmx256m", "-XX:+UseParallelGC")
                .warmupIterations(4)
                .warmupTime(TimeValue.seconds(1))
                .measurementIterations(4)
                .measurementTime(TimeValue.seconds(1))
                .verbosity(VerboseMode.SILENT)
                .build())
        .run();
  }

  private void parts() throws RunnerException {
    System.out.println("One foot, one thread, warm:");
    for (RunResult one : run(AdviceBenchmark.class)) {
      String name = one.getPrimaryResult().getLabel();
      double score = one.getPrimaryResult().getScore();
      micros.put(name, score);
      System.out.printf(
          Locale.ROOT,
          "  %-18s %8.1f us  +- %.1f%n",
          name,
          score,
          one.getPrimaryResult().getScoreError());
    }
  }

  /** A time that grows as the size does has the exponent 1; with its square 2. */
  private void growth() throws RunnerException {
    Map<String, SimpleRegression> lines = new TreeMap<>();
    Map<String, SimpleRegression> powers = new TreeMap<>();
    for (RunResult one : run(GrowthBenchmark.class)) {
      String name = one.getPrimaryResult().getLabel();
      double size = Double.parseDouble(one.getParams().getParam(name));
      double score = one.getPrimaryResult().getScore();
      lines.computeIfAbsent(name, any -> new SimpleRegression()).addData(size, score);
      powers
          .computeIfAbsent(name, any -> new SimpleRegression())
          .addData(Math.log(size), Math.log(score));
    }
    System.out.println("How time grows:");
    lines.forEach(
        (name, line) ->
            System.out.printf(
                Locale.ROOT,
                "  with %-10s %7.2f us each, r2 %.2f; as its power %.2f%n",
                name,
                line.getSlope(),
                line.getRSquare(),
                powers.get(name).getSlope()));
  }
}
