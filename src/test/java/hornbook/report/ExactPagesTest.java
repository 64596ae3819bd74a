package hornbook.report;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.advice.Advice;
import hornbook.assessment.quantity.Units;
import hornbook.plan.Plan;
import hornbook.plan.PlanMaker;
import hornbook.plan.sheet.PlanWishes;
import hornbook.plan.sheet.Technique;
import hornbook.report.advice.AdviceMarkdown;
import hornbook.report.advice.AdviceText;
import hornbook.report.page.TextOptions;
import hornbook.report.sheet.PlanText;
import hornbook.report.words.Detail;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/**
 * Pages word for word. When a page is meant to change, {@code mvn test -Dtest=ExactPagesTest
 * -Dbless} writes them anew: read the difference before it is committed.
 */
class ExactPagesTest {
  private static final Path FOLDER = Path.of("src/test/resources/hornbook/report");

  @Test
  void usual_text() throws Exception {
    holds("torn-toe.txt", text("torn-toe", Units.MM, Detail.USUAL));
  }

  @Test
  void brief_text_of_two_feet_in_inches() throws Exception {
    holds("two-feet.brief.txt", text("two-feet", Units.INCH, Detail.BRIEF));
  }

  @Test
  void a_foot_of_which_nothing_is_known() throws Exception {
    holds("nothing-known.txt", text("nothing-known", Units.MM, Detail.USUAL));
  }

  @Test
  void everything_wrong_still_calls_the_vet_first() throws Exception {
    holds("everything-wrong.txt", text("everything-wrong", Units.MM, Detail.USUAL));
  }

  @Test
  void markdown() throws Exception {
    Advice advice = Pages.advice("torn-toe");
    String page = AdviceMarkdown.render(advice, Units.MM);
    String digest = advice.rulebook().digest();
    assertThat(page).contains(digest);
    holds("torn-toe.md", page.replace(digest, "sha256:..."));
  }

  /** The cautions after it belong to other rules. */
  @Test
  void a_job_sheet_down_to_its_cautions() throws Exception {
    Plan plan =
        PlanMaker.plan(
            Pages.advice("torn-toe"),
            Pages.advice("torn-toe").feet().get(0),
            Technique.PROSTHETIC_WALL,
            PlanWishes.NONE.withDespite("to see the sheet"));
    String page = PlanText.render(plan, Units.MM);
    holds("torn-toe.plan.txt", page.substring(0, page.indexOf("=== CAUTIONS")));
  }

  private static String text(String name, Units units, Detail detail) throws Exception {
    return AdviceText.render(
        Pages.advice(name), new TextOptions(units, detail, false, TextOptions.USUAL_WIDTH));
  }

  private static void holds(String name, String page) throws IOException {
    Path file = FOLDER.resolve(name);
    if (System.getProperty("bless") != null) {
      Files.writeString(file, page);
    }
    assertThat(page)
        .as("to bless: mvn test -Dtest=ExactPagesTest -Dbless")
        .isEqualTo(Files.readString(file));
  }
}
