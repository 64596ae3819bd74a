package hornbook.report.usual;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.advice.Advice;
import hornbook.advice.AfterVet;
import hornbook.advice.CautionGiven;
import hornbook.advice.FindingGiven;
import hornbook.advice.FootAdvice;
import hornbook.advice.OptionAdvice;
import hornbook.advice.ReasonGiven;
import hornbook.advice.Verdict;
import hornbook.assessment.quantity.Units;
import hornbook.report.Pages;
import hornbook.report.advice.AdviceText;
import hornbook.report.page.TextOptions;
import hornbook.report.words.Detail;
import hornbook.report.words.PageContext;
import hornbook.rulebook.fact.Basis;
import hornbook.rulebook.fact.Bearing;
import hornbook.rulebook.fact.Urgency;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What has to stand on the page that is shown without an option, and what must not. */
class UsualPageTest {
  private static final TextOptions USUAL =
      new TextOptions(Units.MM, Detail.USUAL, false, TextOptions.USUAL_WIDTH);

  private static final Pattern BASIS =
      Pattern.compile(
          "\\((memory|practice|derived|quoted)\\)|, (memory|practice|derived|quoted)\\)");

  private interface Check {
    void on(String name, Advice advice, FootAdvice foot, String page);
  }

  /** Every foot of every exercise, with its part of the page. */
  private static void exercises(Check check) {
    int feet = 0;
    for (Map.Entry<String, Advice> one : Pages.whole().entrySet()) {
      if (one.getKey().contains("exercises")) {
        String text = AdviceText.render(one.getValue(), USUAL);
        String[] parts = text.split("=== [A-Z ]+ ===");
        for (FootAdvice foot : one.getValue().feet()) {
          String page = parts[one.getValue().feet().indexOf(foot) + 1].replaceAll("\\s+", " ");
          check.on(one.getKey(), one.getValue(), foot, page);
          feet++;
        }
      }
    }
    assertThat(feet).isGreaterThan(50);
  }

  @Test
  void judgesEverySupportThatSomethingBearsOn() {
    exercises(
        (name, advice, foot, page) -> {
          for (OptionAdvice one : foot.supports()) {
            if (one.verdict() != Verdict.NOT_INDICATED) {
              assertThat(page).as(name + " " + one.id()).contains("SUPPORT");
              if (!page.contains("very support")) {
                assertThat(page.toLowerCase())
                    .as(name)
                    .contains(advice.rulebook().support(one.id()).label());
              }
            }
          }
        });
  }

  @Test
  void namesEveryObjectionToASupport() {
    int[] objections = {0};
    exercises(
        (name, advice, foot, page) -> {
          for (OptionAdvice one : foot.supports()) {
            for (ReasonGiven reason : one.reasons()) {
              boolean objects =
                  reason.bearing() == Bearing.AGAINST || reason.bearing() == Bearing.NEEDS;
              if (objects && one.verdict() == Verdict.WORKABLE) {
                assertThat(page).as(name + " " + one.id()).contains(reason.rule());
                objections[0]++;
              }
            }
          }
        });
    assertThat(objections[0]).isGreaterThan(10);
  }

  @Test
  void namesEveryDefect() {
    exercises(
        (name, advice, foot, page) -> {
          for (FindingGiven one : foot.findings()) {
            if (one.defect()) {
              String label = advice.rulebook().findings().get(one.id()).label();
              assertThat(page.toLowerCase()).as(name).contains(label.toLowerCase());
            }
          }
        });
  }

  @Test
  void givesTheVerdictOnTheWedgeAndNamesShearedHeels() {
    String page = page("sheared-heel-and-flared-quarter");
    assertThat(page).contains("Heel wedge, ruled out").contains("Sheared heels: The heel bulbs");
    assertThat(page("toe-short-enough-and-still-flat")).contains("Heel wedge, for it");
    assertThat(page("long-toe-under-run-heels")).contains("heel wedge, the vet first");
    assertThat(page("thrush-in-a-narrow-foot")).contains("Trim ragged frog so that air reaches");
  }

  @Test
  void asksAtMostThreeQuestionsAndOnASoundFootNone() {
    exercises(
        (name, advice, foot, page) -> {
          assertThat(QuestionsAsked.of(foot)).as(name).hasSizeLessThanOrEqualTo(3);
          assertThat(QuestionsAsked.of(foot))
              .as(name)
              .allMatch(one -> one.alone() || one.provisional());
        });
    Advice sound = Pages.whole().get("cases/exercises/sound-hunter-reset.yaml");
    assertThat(QuestionsAsked.of(sound.feet().get(0))).isEmpty();
  }

  @Test
  void asksForRadiographsOnlyWhereSignsCallForThem() {
    List<String> asked = new ArrayList<>();
    List<String> could = new ArrayList<>();
    exercises(
        (name, advice, foot, page) -> {
          String next = after(page, "LOOK AT NEXT");
          if (next.contains("palmar angle") || next.contains("sole depth")) {
            boolean called =
                foot.referrals().stream().anyMatch(one -> one.urgency() != Urgency.MENTION);
            boolean signs =
                foot.findings().stream()
                    .anyMatch(one -> one.id().matches("laminitis-suspected|dropped-sole|club.*"));
            assertThat(called || signs).as(name).isTrue();
            asked.add(name);
          }
          if (foot.questions().stream().anyMatch(one -> one.field().endsWith("palmarAngle"))) {
            could.add(name);
          }
        });
    assertThat(asked).isNotEmpty();
    assertThat(could).hasSizeGreaterThan(2 * asked.size());
  }

  @Test
  void warnsOfNothingThatIsNotDone() {
    exercises(
        (name, advice, foot, page) -> {
          PageContext told = PageContext.of(advice, Units.MM, Detail.USUAL);
          List<String> chosen =
              Stream.concat(
                      foot.firstChoice().stream(),
                      AfterVet.choice(foot, advice.rulebook()::firstAid).stream())
                  .map(OptionAdvice::id)
                  .toList();
          String care = after(page, "TAKE CARE").split("ALSO WORKABLE|ONLY WITH|RULED OUT")[0];
          for (CautionGiven one : foot.cautions()) {
            boolean done =
                one.techniques().isEmpty() || one.techniques().stream().anyMatch(chosen::contains);
            if (!done) {
              assertThat(care).as(name).doesNotContain(one.rule());
              assertThat(CautionsShown.of(told, foot)).as(name).doesNotContain(one);
            }
          }
        });
  }

  @Test
  void marksTheBasisOfLimitsOnly() {
    boolean[] marked = {false};
    exercises(
        (name, advice, foot, page) -> {
          List<Basis> weak =
              foot.sheet().limits().values().stream()
                  .map(one -> one.basis())
                  .filter(one -> one != Basis.PUBLISHED)
                  .toList();
          assertThat(weak).isNotEmpty();
          BASIS
              .matcher(page)
              .results()
              .forEach(
                  mark -> {
                    String before = page.substring(0, mark.start());
                    assertThat(before).as(name).matches("(?s).*\\d[^.]{0,20}$");
                    marked[0] = true;
                  });
        });
    assertThat(marked[0]).isTrue();
  }

  @Test
  void showsTheMeasurementBehindTheFirstChoiceWithTheLimitThatDecided() {
    assertThat(page("sound-hunter-reset"))
        .contains("Nail sites, weaker branch: 4; fewest nails that hold a branch: 2");
    assertThat(page("toe-short-enough-and-still-flat"))
        .contains("Toe angle minus pastern angle: -3°, near the limit");
    assertThat(page("bare-and-not-quite-level")).doesNotContain("suspected laminitis");
  }

  @Test
  void doesNotSayToWaitAndSeeWhereTheVetIsCalled() {
    assertThat(page("easy-and-nothing-drains"))
        .contains("VET NOW")
        .doesNotContain("a vet if it lasts")
        .doesNotContain("Lame, however slightly");
    assertThat(page("hollow-toe-and-short-steps")).doesNotContain("a vet if it lasts");
    exercises(
        (name, advice, foot, page) -> {
          if (foot.urgency().filter(soon -> soon != Urgency.MENTION).isPresent()) {
            assertThat(page).as(name).doesNotContain("a vet if it lasts");
          }
        });
  }

  @Test
  void namesAShoesSupportOnABareFootOnlyForTheDayItIsShod() {
    assertThat(page("broodmare-lost-quarter"))
        .contains("FIRST CHOICE: no shoe")
        .contains("If it is shod, straight bar shoe, for it");
    assertThat(page("white-line-disease-at-rest"))
        .contains("SUPPORT - Wall relieved of the ground, for it");
    assertThat(page("heel-broken-off-in-the-field")).contains("SUPPORT - Straight bar shoe, for");
  }

  @Test
  void asksWhatAVetHasJudgedOnlyWhereACallStands() {
    exercises(
        (name, advice, foot, page) -> {
          assertThat(page).as(name).doesNotContain("ould only add to the reasons");
          if (foot.referrals().isEmpty()) {
            assertThat(page).as(name).doesNotContain("less urgent");
          }
        });
  }

  @Test
  void leavesWhatIsTrueOfEveryFootToTheJobSheet() {
    String routine = "A012|M006|H013";
    exercises(
        (name, advice, foot, page) ->
            assertThat(page).as(name).doesNotContainPattern("\\[(" + routine + ")\\]"));
    assertThat(whole("sound-hunter-reset")).containsPattern("\\[A012\\]").contains("H013");
  }

  @Test
  void saysWhatToDoUntilTheVetComesWithinDays() {
    assertThat(page("draught-hind-toe-crack")).contains("Meanwhile: Have the vet look within days");
    assertThat(page("white-line-disease-big-resection"))
        .contains("Meanwhile: Ask the vet for radiographs within days")
        .doesNotContain("Lame, however slightly");
  }

  private static String page(String exercise) {
    Advice advice = Pages.whole().get("cases/exercises/" + exercise + ".yaml");
    return AdviceText.render(advice, USUAL).replaceAll("\\s+", " ");
  }

  private static String whole(String exercise) {
    Advice advice = Pages.whole().get("cases/exercises/" + exercise + ".yaml");
    TextOptions full = new TextOptions(Units.MM, Detail.FULL, false, TextOptions.USUAL_WIDTH);
    return AdviceText.render(advice, full);
  }

  private static String after(String page, String heading) {
    int at = page.indexOf(heading);
    return at < 0 ? "" : page.substring(at);
  }
}
