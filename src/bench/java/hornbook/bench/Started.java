package hornbook.bench;

import java.io.File;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;

/**
 * A program that is started again and again.
 *
 * @param environment what its environment has besides
 */
record Started(List<String> command, Map<String, String> environment) {
  /** The seconds one run takes, to its end, with what it writes thrown away. */
  double seconds() {
    try {
      ProcessBuilder builder = new ProcessBuilder(command);
      builder.environment().putAll(environment);
      builder.redirectInput(new File("/dev/null"));
      builder.redirectOutput(ProcessBuilder.Redirect.DISCARD);
      builder.redirectError(ProcessBuilder.Redirect.DISCARD);
      long begun = System.nanoTime();
      int code = builder.start().waitFor();
      double seconds = (System.nanoTime() - begun) / 1e9;
      if (code != 0) {
        throw new IllegalStateException(code + " of " + command);
      }
      return seconds;
    } catch (IOException failed) {
      throw new IllegalStateException(failed);
    } catch (InterruptedException stopped) {
      throw new IllegalStateException(stopped);
    }
  }

  /** The most memory one run held resident, looked at every millisecond. */
  double megabytes() {
    try {
      ProcessBuilder builder = new ProcessBuilder(command);
      builder.environment().putAll(environment);
      builder.redirectOutput(ProcessBuilder.Redirect.DISCARD);
      builder.redirectError(ProcessBuilder.Redirect.DISCARD);
      Process process = builder.start();
      Path status = Path.of("/proc", Long.toString(process.pid()), "status");
      double most = 0;
      while (process.isAlive()) {
        most = Math.max(most, resident(status));
        Thread.sleep(1);
      }
      return most;
    } catch (IOException failed) {
      throw new IllegalStateException(failed);
    } catch (InterruptedException stopped) {
      throw new IllegalStateException(stopped);
    }
  }

  /** How many lines a second one run writes, from one line on to another. */
  double linesPerSecond(int from, int to) {
    try {
      ProcessBuilder builder = new ProcessBuilder(command);
      builder.environment().putAll(environment);
      builder.redirectError(ProcessBuilder.Redirect.DISCARD);
      Process process = builder.start();
      byte[] part = new byte[1 << 16];
      int lines = 0;
      int first = 0;
      long begun = 0;
      try (InputStream out = process.getInputStream()) {
        for (int read = out.read(part); read >= 0 && lines < to; read = out.read(part)) {
          for (int at = 0; at < read; at++) {
            lines += part[at] == '\n' ? 1 : 0;
          }
          if (begun == 0 && lines >= from) {
            begun = System.nanoTime();
            first = lines;
          }
        }
      }
      if (lines < to) {
        throw new IllegalStateException(lines + " lines of " + command);
      }
      double seconds = (System.nanoTime() - begun) / 1e9;
      return (lines - first) / seconds;
    } catch (IOException failed) {
      throw new IllegalStateException(failed);
    }
  }

  private static double resident(Path status) {
    try {
      for (String line : Files.readAllLines(status)) {
        if (line.startsWith("VmHWM:")) {
          return Double.parseDouble(line.replaceAll("\\D", "")) / 1024;
        }
      }
    } catch (IOException | IndexOutOfBoundsException ended) {
      return 0;
    }
    return 0;
  }

  /** The median of how many times as long one run takes as one of another right before it. */
  double timesThatOf(Started other, int runs) {
    List<Double> ratios = new ArrayList<>();
    for (int run = 0; run < runs; run++) {
      double yardstick = other.seconds();
      ratios.add(seconds() / yardstick);
    }
    return median(ratios);
  }

  static double median(List<Double> all) {
    List<Double> sorted = new ArrayList<>(all);
    Collections.sort(sorted);
    int half = sorted.size() / 2;
    return sorted.size() % 2 == 1
        ? sorted.get(half)
        : (sorted.get(half - 1) + sorted.get(half)) / 2;
  }
}
