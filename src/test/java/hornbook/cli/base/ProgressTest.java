package hornbook.cli.base;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

/** The bar, by a clock of the test's own. */
class ProgressTest {
  private static final long SECOND = 1_000_000_000L;

  private final ByteArrayOutputStream screen = new ByteArrayOutputStream();
  private long now = 7;
  private final Progress progress =
      new Progress(new PrintStream(screen, true, StandardCharsets.UTF_8), 100, () -> now);

  private String shown() {
    return screen.toString(StandardCharsets.UTF_8);
  }

  @Test
  void short_work_shows_no_bar() {
    progress.done(50);
    progress.done(100);
    progress.end();
    assertThat(shown()).isEmpty();
  }

  @Test
  void long_work_shows_how_far_it_has_come_and_is_wiped_at_its_end() {
    now += SECOND;
    progress.done(50);
    assertThat(shown()).isEqualTo("\r[" + "=".repeat(20) + " ".repeat(20) + "]");
    progress.done(50);
    progress.done(100);
    assertThat(shown()).endsWith("]\r[" + "=".repeat(40) + "]");
    progress.end();
    assertThat(shown()).endsWith("\r" + " ".repeat(42) + "\r");
  }

  @Test
  void where_nobody_sees_it_there_is_none() {
    Progress unseen = new Progress(null, 100, () -> now);
    now += SECOND;
    unseen.done(50);
    unseen.end();
    assertThat(shown()).isEmpty();
  }
}
