package hornbook.report.page;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Columns, down to screens that are too narrow for them, and lines broken wherever they begin. */
class TextTableTest {
  private static final List<List<String>> ROWS =
      List.of(
          List.of("Toe length", "before 92 mm", "as a nailed shoe leaves it: 96 mm"),
          List.of("Heel", "\u2013", "unmeasured"));

  @Test
  void columns_are_as_wide_as_their_widest_cell() {
    assertThat(TextTable.lines(ROWS, 2, 80))
        .containsExactly(
            "  Toe length  before 92 mm  as a nailed shoe leaves it: 96 mm",
            "  Heel        \u2013             unmeasured");
  }

  @Test
  void the_last_column_goes_on_beneath_itself() {
    assertThat(TextTable.lines(ROWS, 2, 55))
        .startsWith(
            "  Toe length  before 92 mm  as a nailed shoe leaves it:",
            "                            96 mm");
  }

  @ParameterizedTest
  @ValueSource(ints = {20, 30, 40, 45})
  void nothing_is_lost_and_nothing_too_wide(int width) {
    List<String> lines = TextTable.lines(ROWS, 2, width);
    assertThat(lines).allMatch(line -> line.length() <= width);
    assertThat(String.join(" ", lines)).contains("Toe", "92 mm", "96 mm", "unmeasured");
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 5, 12, 13, 30, 40})
  void a_line_that_begins_far_in_still_ends(int width) {
    List<String> lines =
        LineWrap.lines(
            "a word and aVeryLongOneWithoutAnyGap", width, " ".repeat(30), " ".repeat(30));
    assertThat(String.join("", lines).replace(" ", ""))
        .isEqualTo("awordandaVeryLongOneWithoutAnyGap");
  }
}
