package hornbook.report.advice;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.advice.Advice;
import hornbook.advice.AfterVet;
import hornbook.advice.FootAdvice;
import hornbook.advice.OptionAdvice;
import hornbook.assessment.quantity.Units;
import hornbook.report.Kept;
import hornbook.report.Pages;
import hornbook.report.page.TextOptions;
import hornbook.report.words.Detail;
import hornbook.rulebook.fact.Urgency;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class AdviceTextTest {
  /**
   * Holes of a template, names of the program's own, and what is printed when nothing was meant.
   */
  private static final Pattern NOT_FOR_READERS =
      Pattern.compile(
          "[{}]|\\bnull\\b|\\bNaN\\b|Infinity|hornbook\\.|\\bjava|Exception|\\b[A-Z]+_[A-Z]"
              + "|\\bat at\\b|\\ba a\\b|\\bthe a\\b|\\bonly at most\\b|\\b1 (nail|cycle)s\\b| {2}[^ ]");

  /** What the head of a page and its last lines take beside the feet. */
  private static final int HEAD = 7;

  private static final TextOptions USUAL =
      new TextOptions(Units.MM, Detail.USUAL, false, TextOptions.USUAL_WIDTH);

  @Test
  void keeps_to_its_width_and_length() {
    Pages.whole()
        .forEach((name, advice) -> Pages.options().forEach(how -> fits(name, advice, how)));
    Pages.ruleCases().forEach((name, advice) -> fits(name, advice, USUAL));
    Pages.ruleCases().forEach((name, advice) -> fits(name, advice, USUAL.with(Detail.BRIEF)));
  }

  private static void fits(String name, Advice advice, TextOptions how) {
    String text = AdviceText.render(advice, how);
    assertThat(text).as(name).endsWith("\n").doesNotContain("\r", "\t");
    assertThat(text.lines().mapToInt(String::length).max().orElseThrow())
        .as("columns of %s %s", name, how)
        .isLessThanOrEqualTo(how.width());
    if (how.detail() != Detail.FULL) {
      int perFoot =
          how.detail() == Detail.BRIEF ? AdviceText.BRIEF_LINES : AdviceText.USUAL_LINES + HEAD;
      assertThat(text.lines().count())
          .as("lines of %s %s", name, how)
          .isLessThanOrEqualTo((long) perFoot * advice.feet().size() + mustStand(advice, how));
    }
  }

  /** A foot of an exercise takes thirty lines at most; the head of the page and its end aside. */
  @Test
  void tells_an_exercise_in_thirty_lines_a_foot() {
    int seen = 0;
    for (Map.Entry<String, Advice> one : Pages.whole().entrySet()) {
      if (one.getKey().contains("exercises")) {
        List<String> lines = AdviceText.render(one.getValue(), USUAL).lines().toList();
        int end = lines.indexOf(PageHead.SAFETY.substring(0, lines.get(lines.size() - 2).length()));
        int foot = 0;
        for (String line : lines.subList(0, end - 1)) {
          foot = line.startsWith("=== ") ? 1 : foot == 0 ? 0 : foot + 1;
          assertThat(foot).as(one.getKey()).isLessThanOrEqualTo(AdviceText.USUAL_LINES);
          seen++;
        }
      }
    }
    assertThat(seen).isPositive();
  }

  /** The lines that calls for now and today and the conditions of the first choice take at most. */
  private static long mustStand(Advice advice, TextOptions how) {
    long characters = 0;
    long paragraphs = 0;
    for (String kept : Kept.of(advice)) {
      characters += kept.length();
      paragraphs++;
    }
    for (FootAdvice foot : advice.feet()) {
      paragraphs += AfterVet.choice(foot, advice.rulebook()::firstAid).isPresent() ? 1 : 0;
      paragraphs += 2L * foot.sheet().held().size();
    }
    int narrowest = how.width() - 30;
    return characters / narrowest + 2 * paragraphs;
  }

  @Test
  void fits_a_narrow_page_too() throws Exception {
    for (Detail detail : Detail.values()) {
      TextOptions narrow = new TextOptions(Units.INCH, detail, false, 40);
      String text = AdviceText.render(Pages.advice("everything-wrong"), narrow);
      assertThat(text.lines())
          .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(narrow.width()));
    }
  }

  @Test
  void shows_nothing_of_the_machine() {
    // Most lines stand on many pages: each is looked through once.
    Set<String> lines = new HashSet<>();
    Pages.all()
        .forEach(
            (name, advice) ->
                assertThat(AdviceText.render(advice, USUAL.with(Detail.FULL)).lines())
                    .as(name)
                    .noneMatch(
                        line -> lines.add(line) && NOT_FOR_READERS.matcher(line.strip()).find()));
  }

  @Test
  void in_full_drops_nothing() {
    Pages.whole()
        .forEach(
            (name, advice) -> {
              String text = flat(AdviceText.render(advice, USUAL.with(Detail.FULL)));
              for (FootAdvice foot : advice.feet()) {
                assertThat(rules(foot))
                    .as(name)
                    .allSatisfy(rule -> assertThat(text).contains(rule));
                assertThat(foot.questions())
                    .as(name)
                    .allSatisfy(
                        question -> assertThat(text).contains("Field: " + question.field()));
              }
            });
  }

  private static List<String> rules(FootAdvice foot) {
    Stream<OptionAdvice> judged =
        Stream.concat(foot.techniques().stream(), foot.supports().stream());
    return Stream.of(
            foot.referrals().stream().map(one -> one.rule()),
            foot.findings().stream().map(one -> one.rule()),
            foot.cautions().stream().map(one -> one.rule()),
            judged.flatMap(one -> one.reasons().stream()).map(one -> one.rule()))
        .flatMap(all -> all)
        .distinct()
        .toList();
  }

  @Test
  void tells_the_vets_part_before_anything_else() {
    Pages.whole()
        .forEach(
            (name, advice) -> {
              for (Detail detail : Detail.values()) {
                String text = AdviceText.render(advice, USUAL.with(detail));
                assertThat(flat(text)).as(name).contains(PageHead.SAFETY);
                if (advice.urgency().filter(urgency -> urgency == Urgency.NOW).isPresent()) {
                  assertThat(text).as(name).contains("VET NOW");
                }
                if (advice.feet().get(0).provisional()) {
                  assertThat(text.indexOf("PROVISIONAL"))
                      .as(name)
                      .isLessThan(text.indexOf("FIRST CHOICE"));
                }
                assertThat(text.contains("PROVISIONAL")).as(name).isEqualTo(advice.provisional());
              }
            });
  }

  @Test
  void tells_of_first_aid_only_where_something_calls_for_it() throws Exception {
    String nail = "sore nail drawn";
    String bare = "cases/exercises/showjumper-torn-side.yaml";
    String pricked = "cases/exercises/pricked-two-days-ago.yaml";
    for (Detail detail : List.of(Detail.BRIEF, Detail.USUAL)) {
      assertThat(AdviceText.render(Pages.whole().get(bare), USUAL.with(detail)))
          .doesNotContain(nail);
      assertThat(AdviceText.render(Pages.whole().get(pricked), USUAL.with(detail))).contains(nail);
    }
    assertThat(flat(AdviceText.render(Pages.whole().get(bare), USUAL.with(Detail.FULL))))
        .contains(nail);
  }

  @Test
  void keeps_what_to_do_meanwhile_on_the_shortest_page() throws Exception {
    String brief = AdviceText.render(Pages.advice("two-feet"), USUAL.with(Detail.BRIEF));
    assertThat(flat(brief))
        .contains("VET TODAY: A hot hoof and a raised pulse. Have the vet see it today")
        .contains("VET TODAY: A sore sole with more pulse than usual. Have the vet see it today");
  }

  @Test
  void colours_headings_and_nothing_else() throws Exception {
    for (Detail detail : Detail.values()) {
      Advice advice = Pages.advice("two-feet");
      TextOptions plain = USUAL.with(detail);
      TextOptions coloured = new TextOptions(Units.MM, detail, true, TextOptions.USUAL_WIDTH);
      String text = AdviceText.render(advice, coloured);
      assertThat(text).contains("\u001b[");
      assertThat(text.replaceAll("\u001b\\[[0-9;]*m", ""))
          .isEqualTo(AdviceText.render(advice, plain));
    }
  }

  /** A text without its line ends. */
  static String flat(String text) {
    return text.replaceAll("\\s+", " ");
  }
}
