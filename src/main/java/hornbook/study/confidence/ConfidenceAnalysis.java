package hornbook.study.confidence;

import hornbook.advice.FootAdvice;
import hornbook.advice.engine.Advisor;
import hornbook.advice.engine.OutcomeCache;
import hornbook.advice.outcome.Outcome;
import hornbook.assessment.Assessment;
import hornbook.study.contrast.OutcomeChanges;
import hornbook.study.measure.Measurement;
import hornbook.study.measure.Measurements;
import hornbook.study.measure.MeasuringErrors;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.IntConsumer;

/** Finds out how steady the advice on a foot is. */
public final class ConfidenceAnalysis {
  public static final int USUAL_RUNS = 10_000;
  public static final int MOST_RUNS = 10_000_000;

  /** Runs done by one thread in one go; fixed, so that threads make no difference. */
  private static final int BATCH = 250;

  /** Turned runs looked into to find what turned them. */
  private static final int LOOKED_INTO = 200;

  /**
   * Assessments done to find what turned runs: of a foot of many stretches fewer runs are taken.
   */
  private static final int MOST_LOOKS = 8_000;

  private final Advisor advisor;
  private final int threads;

  /**
   * @param threads at least 1; the answer does not hang on it
   */
  public ConfidenceAnalysis(Advisor advisor, int threads) {
    this.advisor = advisor;
    this.threads = threads;
  }

  /**
   * Measures again so many times.
   *
   * @param foot its place in the assessment
   * @param done told the number of runs done, now and then, from any thread
   */
  public Confidence of(Assessment assessment, int foot, int runs, long seed, IntConsumer done) {
    FootAdvice noted = advisor.advise(assessment).feet().get(foot);
    List<Measurement> measurements = Measurements.of(assessment, noted.sheet().limits());
    MeasuringErrors errors = MeasuringErrors.of(noted.sheet().limits());
    Trial trial =
        new Trial(
            new MeasurementSimulation(assessment, measurements, errors),
            new OutcomeCache(advisor),
            Outcome.of(noted),
            measurements,
            foot,
            seed,
            lookedInto(runs, measurements.size()));
    Batch all = all(trial, runs, done);
    return new Confidence(
        noted,
        runs,
        seed,
        all.tally.steady(),
        all.tally.firstChoice(),
        all.tally.techniques(),
        all.tally.supports(),
        all.tally.referrals(),
        all.tally.findings(),
        all.blame.retake(measurements),
        measurements,
        errors);
  }

  /** How many turned runs of a batch are looked into. */
  private static int lookedInto(int runs, int measurements) {
    int batches = (runs + BATCH - 1) / BATCH;
    int turned = Math.min(LOOKED_INTO, MOST_LOOKS / Math.max(1, measurements));
    return Math.max(1, turned / batches);
  }

  private Batch all(Trial trial, int runs, IntConsumer done) {
    ExecutorService pool = Executors.newFixedThreadPool(threads, ConfidenceAnalysis::thread);
    try {
      Batch all = new Batch(trial.measurements.size());
      int window = 4 * threads;
      List<Future<Batch>> waiting = new ArrayList<>();
      int counted = 0;
      for (int from = 0; from < runs; from += BATCH) {
        int first = from;
        int end = Math.min(runs, from + BATCH);
        waiting.add(pool.submit(() -> trial.batch(first, end)));
        if (waiting.size() == window) {
          counted += add(all, waiting.remove(0), done, counted);
        }
      }
      for (Future<Batch> rest : waiting) {
        counted += add(all, rest, done, counted);
      }
      return all;
    } catch (InterruptedException stopped) {
      Thread.currentThread().interrupt();
      throw new IllegalStateException(stopped);
    } catch (ExecutionException fault) {
      throw new IllegalStateException(fault.getCause());
    } finally {
      pool.shutdownNow();
    }
  }

  /** Batches are added in their order, so that sums come out the same to the last digit. */
  private static int add(Batch all, Future<Batch> one, IntConsumer done, int counted)
      throws InterruptedException, ExecutionException {
    Batch batch = one.get();
    all.tally.add(batch.tally);
    all.blame.add(batch.blame);
    done.accept(counted + batch.runs);
    return batch.runs;
  }

  private static Thread thread(Runnable work) {
    Thread thread = new Thread(work, "measuring again");
    thread.setDaemon(true);
    return thread;
  }

  /** What came of some runs. */
  private static final class Batch {
    private final OutcomeTally tally = new OutcomeTally();
    private final Attribution blame;
    private int runs;

    Batch(int measurements) {
      blame = new Attribution(measurements);
    }
  }

  /** One foot, to be measured again as often as wanted. */
  private record Trial(
      MeasurementSimulation remeasuring,
      OutcomeCache standings,
      Outcome noted,
      List<Measurement> measurements,
      int foot,
      long seed,
      int lookedInto) {

    Batch batch(int from, int end) {
      Batch batch = new Batch(measurements.size());
      int looked = 0;
      for (int run = from; run < end; run++) {
        double[] drawn = remeasuring.draw(seed, run);
        Outcome standing = standings.of(remeasuring.with(drawn), foot);
        boolean same = standing.sameAdvice(noted);
        batch.tally.count(standing, same);
        batch.runs++;
        if (!same && looked < lookedInto) {
          looked++;
          blame(batch.blame, drawn, OutcomeChanges.between(noted, standing));
        }
      }
      return batch;
    }

    private void blame(Attribution blame, double[] drawn, Set<String> turned) {
      blame.turn();
      for (int at = 0; at < drawn.length; at++) {
        double[] put = drawn.clone();
        put[at] = measurements.get(at).value();
        Outcome standing = standings.of(remeasuring.with(put), foot);
        Set<String> back = new LinkedHashSet<>(turned);
        back.removeAll(OutcomeChanges.between(noted, standing));
        if (!back.isEmpty()) {
          blame.add(at, (double) back.size() / turned.size(), back);
        }
      }
    }
  }
}
