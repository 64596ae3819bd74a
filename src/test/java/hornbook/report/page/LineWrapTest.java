package hornbook.report.page;

import static org.assertj.core.api.Assertions.assertThat;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.AlphaChars;
import net.jqwik.api.constraints.Chars;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;

class LineWrapTest {
  @Test
  void breaks_between_words_and_hangs_the_rest() {
    assertThat(LineWrap.lines("one two three four", 10, "- ", "  "))
        .containsExactly("- one two", "  three", "  four");
  }

  @Test
  void breaks_a_word_too_long_for_a_line() {
    assertThat(LineWrap.lines("ab abcdefghijkl m", 6, "", " "))
        .containsExactly("ab", " abcde", " fghij", " kl m");
  }

  @Property
  void loses_nothing_and_keeps_to_the_width(
      @ForAll @AlphaChars @Chars(' ') @StringLength(max = 200) String text,
      @ForAll @IntRange(min = 5, max = 80) int width) {
    var lines = LineWrap.lines(text, width, "- ", "  ");
    assertThat(lines).allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(width));
    String kept = String.join("", lines).substring(2).replace(" ", "");
    assertThat(kept).isEqualTo(text.replace(" ", ""));
  }
}
