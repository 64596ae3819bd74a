package hornbook.report;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.advice.Advice;
import java.util.Map;
import org.junit.jupiter.api.Test;

class AdviceTextTest {
  @Test
  void no_line_is_wider_than_the_page_and_no_page_longer_than_promised() throws Exception {
    for (Map.Entry<String, Advice> one : Pages.all().entrySet()) {
      int feet = one.getValue().feet().size();
      for (TextOptions options : Pages.options().toList()) {
        String what = one.getKey() + " " + options;
        String text = AdviceText.render(one.getValue(), options);
        assertThat(text.lines().mapToInt(String::length).max().orElseThrow())
            .as(what)
            .isLessThanOrEqualTo(options.width());
        int most =
            switch (options.detail()) {
              case BRIEF -> AdviceText.BRIEF_LINES * feet;
              case USUAL -> AdviceText.USUAL_LINES * feet;
              case FULL -> Integer.MAX_VALUE;
            };
        assertThat(text.lines().count()).as(what).isLessThanOrEqualTo(most);
      }
    }
  }
}
