package hornbook.cli.base;

import java.io.PrintStream;
import java.util.function.LongSupplier;

/**
 * A bar that shows how far a long piece of work has come; only on a terminal, and only once the
 * work has lasted.
 */
public final class Progress {
  private static final long PATIENCE_NANOS = 500_000_000L;
  private static final int WIDTH = 40;

  private final PrintStream to;
  private final long all;
  private final LongSupplier nanos;
  private final long began;
  private int drawn = -1;

  /**
   * @param to null to show nothing
   * @param nanos the clock
   */
  Progress(PrintStream to, long all, LongSupplier nanos) {
    this.to = to;
    this.all = all;
    this.nanos = nanos;
    this.began = nanos.getAsLong();
  }

  /**
   * A bar for work of so many steps; the launcher tells whether standard error is a terminal, which
   * only a shell can see.
   */
  public static Progress of(Surroundings surroundings, long all) {
    boolean shown = Boolean.getBoolean("hornbook.progress");
    return new Progress(shown ? surroundings.err() : null, all, System::nanoTime);
  }

  /** The same, where it may be shown; where nobody can know how much there is, none is. */
  public static Progress of(Surroundings surroundings, long all, boolean shown) {
    return shown && all > 0 ? of(surroundings, all) : new Progress(null, 1, System::nanoTime);
  }

  /** Shows that so many steps are done. */
  public synchronized void done(long steps) {
    if (to == null || nanos.getAsLong() - began < PATIENCE_NANOS) {
      return;
    }
    int filled = (int) (WIDTH * steps / all);
    if (filled > drawn) {
      drawn = filled;
      to.print("\r[" + "=".repeat(filled) + " ".repeat(WIDTH - filled) + "]");
      to.flush();
    }
  }

  /** Wipes the bar. */
  public synchronized void end() {
    if (drawn >= 0) {
      to.print("\r" + " ".repeat(WIDTH + 2) + "\r");
      to.flush();
    }
  }
}
