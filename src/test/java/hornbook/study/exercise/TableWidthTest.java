package hornbook.study.exercise;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.assessment.tree.Fault;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** A table is read up to a width that no class reaches, and refused beyond it with its line. */
class TableWidthTest {
  private final List<Fault> faults = new ArrayList<>();

  @Test
  void a_thousand_columns_are_read_row_after_row() {
    assertThat(TableWidth.fits(row(1_000) + "\n" + row(1_000), ',', "class.csv", faults)).isTrue();
    assertThat(faults).isEmpty();
  }

  @Test
  void one_more_is_refused_on_its_line() {
    assertThat(TableWidth.fits("by,vet\n" + row(1_001), ',', "class.csv", faults)).isFalse();
    assertThat(faults)
        .extracting(Fault::message)
        .containsExactly(
            "class.csv:2:1: found more than 1000 columns; allowed: up to 1000 columns");
  }

  private static String row(int columns) {
    return ",".repeat(columns - 1);
  }
}
