package hornbook.madeup;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.advice.Advice;
import hornbook.assessment.quantity.Units;
import hornbook.report.Kept;
import hornbook.report.advice.AdviceHtml;
import hornbook.report.advice.AdviceJson;
import hornbook.report.advice.AdviceMarkdown;
import hornbook.report.advice.AdviceText;
import hornbook.report.page.TextOptions;
import hornbook.report.words.Detail;
import hornbook.rules.Shipped;
import java.util.List;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/**
 * No page drops a call for now or today, what to do until the vet comes, what has to be done first
 * or what speaks against the first choice: neither the default page nor the brief one, in no form.
 */
class NothingDroppedTest {
  /** What pages write a sign as. */
  private static final Pattern ENTITY = Pattern.compile("&#?\\w+;|\\\\u[0-9a-fA-F]{4}");

  @Test
  void everyPageKeepsWhatMustStand() throws Exception {
    AtomicInteger kept = new AtomicInteger();
    new Horses(47)
        .each(
            horse -> {
              Advice advice = Shipped.ADVISOR.advise(horse);
              List<String> must = Kept.of(advice).stream().map(NothingDroppedTest::bare).toList();
              kept.addAndGet(must.size());
              holds(text(advice, Detail.BRIEF), must, "text, brief");
              holds(text(advice, Detail.USUAL), must, "text");
              // The long forms in turn, so that a thousand horses stay quick.
              Detail brief = Detail.BRIEF;
              switch (Math.floorMod(must.hashCode(), 5)) {
                case 0 -> holds(text(advice, Detail.FULL), must, "text, full");
                case 1 -> holds(AdviceHtml.render(advice, Units.MM), must, "HTML");
                case 2 -> holds(AdviceHtml.render(advice, Units.MM, brief), must, "HTML, brief");
                case 3 -> holds(AdviceMarkdown.render(advice, Units.MM, brief), must, "brief md");
                default -> holds(AdviceMarkdown.render(advice, Units.MM), must, "Markdown");
              }
            });
    assertThat(kept.get()).isGreaterThan(Horses.HOW_MANY);
  }

  @Test
  void theJsonKeepsWhatMustStand() throws Exception {
    new Horses(53)
        .each(
            horse -> {
              Advice advice = Shipped.ADVISOR.judge(horse);
              List<String> must = Kept.said(advice).stream().map(NothingDroppedTest::bare).toList();
              holds(AdviceJson.line(advice, Units.MM), must, "JSON");
            });
  }

  private static String text(Advice advice, Detail detail) {
    return AdviceText.render(
        advice, new TextOptions(Units.MM, detail, false, TextOptions.USUAL_WIDTH));
  }

  private static void holds(String page, List<String> must, String form) {
    String bare = bareOfMarks(page);
    for (String one : must) {
      assertThat(bare).as(form).contains(one);
    }
  }

  /** The same without tags, and without what pages write a sign as. */
  private static String bareOfMarks(String page) {
    char[] bare = new char[page.length()];
    int kept = 0;
    Matcher entity = ENTITY.matcher(page);
    int at = 0;
    while (at < page.length()) {
      char sign = page.charAt(at);
      int close = sign == '<' ? page.indexOf('>', at) : -1;
      if (close >= 0) {
        at = close + 1;
      } else if ((sign == '&' || sign == '\\') && entity.region(at, page.length()).lookingAt()) {
        at = entity.end();
      } else {
        bare[kept] = sign;
        kept += counts(sign) ? 1 : 0;
        at++;
      }
    }
    return new String(bare, 0, kept);
  }

  /** Letters and digits alone: pages break and mark their lines each in its own way. */
  private static String bare(String text) {
    char[] bare = new char[text.length()];
    int kept = 0;
    for (int at = 0; at < text.length(); at++) {
      bare[kept] = text.charAt(at);
      kept += counts(bare[kept]) ? 1 : 0;
    }
    return new String(bare, 0, kept);
  }

  private static boolean counts(char sign) {
    return Character.isAlphabetic(sign) || Character.isDigit(sign);
  }
}
