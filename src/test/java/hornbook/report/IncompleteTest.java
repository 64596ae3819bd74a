package hornbook.report;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.advice.Advice;
import hornbook.assessment.quantity.Units;
import hornbook.report.advice.AdviceHtml;
import hornbook.report.advice.AdviceMarkdown;
import hornbook.report.advice.AdviceText;
import hornbook.report.page.Section;
import hornbook.report.page.TerminalStyle;
import hornbook.report.page.TextOptions;
import hornbook.report.words.Detail;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What stops an answer because it was begun and left incomplete stands above the answer. */
class IncompleteTest {
  private static final String NO_SIDE =
      """
      format: hornbook-assessment/1
      feet:
        - limb: left-fore
          measures: {bearingLength: 130 mm}
          wall:
            - {from: 0 mm, to: 150 mm, state: sound, thickness: 9 mm}
            - {side: lateral, from: 0 mm, to: 150 mm, state: sound, thickness: 9 mm}
      """;

  private static List<String> pages(Advice advice) {
    List<String> pages = new ArrayList<>();
    for (Detail detail : Detail.values()) {
      pages.add(AdviceText.render(advice, TextOptions.usual().with(detail)));
      pages.add(AdviceHtml.render(advice, Units.MM, detail));
      pages.add(AdviceMarkdown.render(advice, Units.MM, detail));
    }
    return pages;
  }

  @Test
  void aRowWithoutItsSideIsNamedAboveTheVerdictOnEveryPage() {
    for (String page : pages(Pages.read(NO_SIDE))) {
      String plain = page.replace("\\", "").replaceAll("\\s+", " ");
      assertThat(plain).contains("side (medial or lateral) is missing");
      assertThat(plain.indexOf("is missing")).isLessThan(plain.indexOf("FIRST CHOICE"));
    }
    String full = AdviceText.render(Pages.read(NO_SIDE), TextOptions.usual().with(Detail.FULL));
    String plain = full.replaceAll("\\s+", " ");
    assertThat(plain).contains("Width is missing");
  }

  @Test
  void aWholeMapIsNotCalledIncomplete() {
    String whole =
        NO_SIDE.replace("{from", "{side: medial, from").replace("130 mm", "130, width: 124");
    for (String page : pages(Pages.read(whole))) {
      assertThat(page).doesNotContain("INCOMPLETE");
    }
  }

  @Test
  void aPageOfMarkdownOrHtmlIsAsShortAsAskedFor() {
    Advice advice = Pages.read(NO_SIDE);
    assertThat(AdviceMarkdown.render(advice, Units.MM, Detail.BRIEF)).doesNotContain("MEASURED");
    assertThat(AdviceMarkdown.render(advice, Units.MM, Detail.FULL)).contains("MEASURED");
    assertThat(AdviceHtml.render(advice, Units.MM, Detail.BRIEF).length())
        .isLessThan(AdviceHtml.render(advice, Units.MM, Detail.FULL).length() / 2);
  }

  @Test
  void noFirstChoiceIsNotPrintedGreen() {
    String green = "\u001b[1;32m";
    assertThat(TerminalStyle.TERMINAL.heading(Section.Kind.CHOICE, "NO FIRST CHOICE"))
        .doesNotContain(green);
    assertThat(TerminalStyle.TERMINAL.heading(Section.Kind.CHOICE, "FIRST CHOICE: glue"))
        .contains(green);
  }
}
