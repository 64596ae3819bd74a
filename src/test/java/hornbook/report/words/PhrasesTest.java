package hornbook.report.words;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.advice.Advice;
import hornbook.advice.FootAdvice;
import hornbook.advice.Statement;
import hornbook.assessment.quantity.Units;
import hornbook.report.Pages;
import hornbook.rulebook.Subjects;
import hornbook.rulebook.fact.Basis;
import hornbook.rulebook.fact.CitedFact;
import hornbook.rulebook.fact.Crack;
import hornbook.rulebook.fact.Finding;
import hornbook.rulebook.fact.Limit;
import hornbook.rulebook.fact.Reading;
import hornbook.rulebook.fact.Seen;
import hornbook.rulebook.fact.Stretch;
import hornbook.rules.Shipped;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class PhrasesTest {
  private static final Phrases MM = new Phrases(Shipped.BOOK, Units.MM);
  private static final Phrases INCH = new Phrases(Shipped.BOOK, Units.INCH);
  private static final List<String> BARE = List.of("");

  private static Limit limit(String unit, double value, Basis basis) {
    return new Limit(
        "a.limit",
        "a limit",
        value,
        unit,
        Limit.Direction.AT_LEAST,
        true,
        null,
        null,
        "practice",
        "here",
        basis,
        Limit.Safer.UP,
        1,
        List.of(),
        false);
  }

  private static Reading reading(String what, double low, double high) {
    return new Reading(what, low, high, List.of());
  }

  private static String says(Phrases phrases, String template, CitedFact... facts) {
    Map<String, CitedFact> holes = new java.util.LinkedHashMap<>();
    for (CitedFact fact : facts) {
      holes.put(String.valueOf((char) ('a' + holes.size())), fact);
    }
    return phrases.says(new Statement(template, holes));
  }

  @Test
  void fills_holes_with_numbers_words_and_names() {
    assertThat(says(MM, "The sole is {a} deep.", reading("soleDepth", 11.5, 11.5)))
        .isEqualTo("The sole is 11.5 mm deep.");
    assertThat(says(INCH, "The sole is {a} deep.", reading("soleDepth", 12.7, 12.7)))
        .isEqualTo("The sole is 1/2 in deep.");
    assertThat(says(MM, "The pulse is {a}.", new Seen("digitalPulse", "bounding", "")))
        .isEqualTo("The pulse is bounding.");
    assertThat(says(MM, "A stain at the {a}.", new Seen("stain", "corn-seat", "")))
        .isEqualTo("A stain at the seat of corn.");
    assertThat(says(MM, "{a}: a bar.", new Finding("under-run-heels", List.of())))
        .isEqualTo("Under-run heels: a bar.");
  }

  @Test
  void describes_cracks_and_stretches() {
    Crack crack = new Crack("quarter", "lateral", null, null, null, null, null, null, "");
    assertThat(says(MM, "The {a} bleeds.", crack))
        .isEqualTo("The quarter crack on the outer side bleeds.");
    Stretch stretch = new Stretch("medial", "separated", null, null, null, 0, 40, "");
    assertThat(says(MM, "The {a} is damp.", stretch))
        .isEqualTo("The separated inner wall from 0 to 40 mm is damp.");
    assertThat(says(INCH, "The {a} is damp.", stretch))
        .isEqualTo("The separated inner wall from 0 to 1 9/16 in is damp.");
    Stretch unmeasured =
        new Stretch(null, "broken-away", null, null, null, Double.NaN, Double.NaN, "");
    assertThat(says(MM, "{a}.", unmeasured)).isEqualTo("Broken-away wall.");
  }

  @Test
  void bends_words_to_their_places() {
    Finding foal = new Finding("foal", List.of());
    assertThat(says(MM, "The {a} sleeps; a {a} eats.", foal))
        .isEqualTo("The foal sleeps; a foal eats.");
    Reading one = reading("nail-sites-weaker-branch", 1, 1);
    assertThat(says(MM, "There is wall for {a} nails.", one))
        .isEqualTo("There is wall for 1 nail.");
    Reading few = reading("nail-sites-weaker-branch", 0, 1);
    assertThat(says(MM, "Only {a} nails hold; wall for {a} nails.", few))
        .isEqualTo("At most 1 nail hold; wall for at most 1 nail.");
    assertThat(says(MM, "Lame. {a} of it.", reading("sound-share", 0, 40)))
        .isEqualTo("Lame. At most 40% of it.");
  }

  @Test
  void tells_a_reading_from_the_limit_it_was_held_against() {
    Limit five = limit("deg", 5, Basis.PUBLISHED);
    String template = "{a} against {b}.";
    assertThat(says(MM, template, reading("toeAngle", 5, 5), five)).isEqualTo("5° against 5°.");
    assertThat(says(MM, template, reading("toeAngle", 4.97, 4.97), five))
        .isEqualTo("4.97° against 5°.");
    assertThat(
            says(INCH, template, reading("soleDepth", 5.9, 5.9), limit("mm", 6, Basis.PUBLISHED)))
        .isEqualTo("0.232 in against 0.236 in.");
    assertThat(says(MM, template, reading("sound-share", 59.6, 59.6), limit("%", 60, Basis.MEMORY)))
        .isEqualTo("59.6% against 60%.");
  }

  @Test
  void names_the_ground_of_what_is_not_published() {
    Limit six = limit("mm", 6, Basis.MEMORY);
    Statement bare = new Statement("A nail wants {a}.", Map.of("a", six));
    assertThat(MM.grounded(bare, Basis.MEMORY)).isEqualTo("A nail wants 6 mm (memory).");
    Statement bracketed = new Statement("A nail (of {a}) holds.", Map.of("a", six));
    assertThat(MM.grounded(bracketed, Basis.MEMORY)).isEqualTo("A nail (of 6 mm, memory) holds.");
    Statement plain = new Statement("Dry it first.", Map.of());
    assertThat(MM.grounded(plain, Basis.PRACTICE)).isEqualTo("Dry it first. (practice)");
    assertThat(MM.grounded(plain, Basis.PUBLISHED)).isEqualTo("Dry it first.");
  }

  @Test
  void converts_amounts_that_stand_in_the_texts() {
    String text = "Tape of 6 to 10 mm at 22 C, bone harmed at 47 C, 0.5 cm, 12 %, 5 days.";
    assertThat(MM.plain(text))
        .isEqualTo("Tape of 6 to 10 mm at 22 °C, bone harmed at 47 °C, 5 mm, 12%, 5 days.");
    assertThat(INCH.plain(text))
        .isEqualTo("Tape of 1/4 to 3/8 in at 72 °F, bone harmed at 117 °F, 3/16 in, 12%, 5 days.");
  }

  @Test
  void every_number_in_a_rules_sentence_carries_its_unit() {
    for (Statement says : everythingSaid()) {
      for (Map.Entry<String, CitedFact> hole : says.holes().entrySet()) {
        String unit = unit(hole.getValue());
        if (unit != null && !BARE.contains(unit)) {
          assertThat(MM.of(hole.getValue()))
              .as(says.template())
              .matches(".*\\d.*")
              .matches(shown(unit));
          assertThat(INCH.of(hole.getValue())).as(says.template()).matches(shown(unit));
        }
      }
    }
  }

  private static String unit(CitedFact fact) {
    if (fact instanceof Limit limit) {
      return limit.unit();
    }
    return fact instanceof Reading reading ? Subjects.unit(reading.what()) : null;
  }

  private static String shown(String unit) {
    return switch (unit) {
      case "mm" -> ".*\\d (mm|in)";
      case "deg" -> ".*\\d°";
      case "%" -> ".*\\d%";
      case "kg" -> ".*\\d (kg|lb)";
      case "C" -> ".*\\d °[CF]";
      case "ratio" -> ".*\\d to 1";
      case "grade" -> "grade \\d.*";
      case "hours" -> ".*\\d hours?";
      case "days" -> ".*\\d days?";
      case "weeks" -> ".*\\d weeks?";
      case "years" -> ".*\\d years?";
      case "psi" -> ".*\\d psi";
      case "mm/month" -> ".*\\d (mm|in) a month";
      default -> "no unit known as " + unit;
    };
  }

  @Test
  void no_sentence_keeps_a_hole_or_a_foreign_unit() {
    for (Statement says : everythingSaid()) {
      assertThat(MM.says(says))
          .doesNotContain("{", "}")
          .doesNotContainPattern("/\\d+ in\\b|\\d lb\\b|°F");
      assertThat(INCH.says(says))
          .doesNotContain("{", "}")
          .doesNotContainPattern("\\d (mm|cm|kg)\\b")
          .doesNotContain("°C");
    }
  }

  private static List<Statement> everythingSaid() {
    List<Statement> all = new ArrayList<>();
    for (Advice advice : Pages.all().values()) {
      for (FootAdvice foot : advice.feet()) {
        Stream.of(
                foot.referrals().stream().map(one -> one.says()),
                foot.referrals().stream().map(one -> one.meanwhile()),
                foot.findings().stream().map(one -> one.says()),
                foot.cautions().stream().map(one -> one.says()),
                Stream.concat(foot.techniques().stream(), foot.supports().stream())
                    .flatMap(one -> one.reasons().stream())
                    .map(one -> one.says()))
            .flatMap(some -> some)
            .filter(Objects::nonNull)
            .forEach(all::add);
      }
    }
    assertThat(all).hasSizeGreaterThan(1000);
    return all;
  }
}
