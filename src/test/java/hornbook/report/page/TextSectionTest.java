package hornbook.report.page;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.report.page.Section.Item;
import hornbook.report.page.Section.Kind;
import java.util.List;
import org.junit.jupiter.api.Test;

class TextSectionTest {
  private static TextSection section(Kind kind, String... items) {
    List<Item> said =
        List.of(items).stream()
            .map(item -> new Item(item, "and what it says", List.of("Meanwhile: rest."), "R001"))
            .toList();
    return new TextSection(new Section(kind, "HEADING", said), 40, true);
  }

  @Test
  void says_how_many_it_left_out() {
    TextSection section = section(Kind.NOT_INDICATED, "one", "two", "three");
    section.shrink();
    assertThat(section.lines(TerminalStyle.NONE))
        .containsExactly(
            "HEADING",
            "- One: and what it says [R001]",
            "  Meanwhile: rest.",
            "- Two: and what it says [R001]",
            "  Meanwhile: rest.",
            "  and 1 more: --full");
    section.shrink();
    section.shrink();
    assertThat(section.lines(TerminalStyle.NONE)).containsExactly("HEADING: 3 more with --full");
  }

  @Test
  void names_the_vets_cases_that_have_no_room() {
    TextSection section = section(Kind.REFERRAL_LATER, "one", "two", "three");
    section.shrink();
    section.shrink();
    assertThat(section.lines(TerminalStyle.NONE))
        .containsExactly(
            "HEADING",
            "- One: and what it says [R001]",
            "  Meanwhile: rest.",
            "- Two [R001]; three [R001].");
    section.shrink();
    assertThat(section.lines(TerminalStyle.NONE))
        .containsExactly("HEADING: One [R001]; two [R001]; three", "  [R001].");
  }

  @Test
  void keeps_what_to_do_until_the_vet_comes() {
    String two = "two told at some length";
    TextSection section = section(Kind.REFERRAL, "one", two);
    section.shrink();
    assertThat(section.lines(TerminalStyle.NONE))
        .containsExactly(
            "HEADING",
            "- One: and what it says [R001]",
            "  Meanwhile: rest.",
            "- Two told at some length [R001]",
            "  Meanwhile: rest.");
  }

  @Test
  void gives_way_in_order_and_no_further_than_it_must() {
    TextSection vet = section(Kind.REFERRAL, "one", "two");
    TextSection care = section(Kind.CAUTIONS, "a", "b", "c", "d", "e", "f", "g", "h");
    int whole = vet.height() + care.height();
    TextFit.within(whole - 1, List.of(vet, care));
    assertThat(vet.lines(TerminalStyle.NONE)).hasSize(5);
    assertThat(vet.height() + care.height()).isLessThan(whole);
    TextFit.within(7, List.of(vet, care));
    assertThat(vet.height() + care.height()).isLessThanOrEqualTo(7);
    assertThat(vet.lines(TerminalStyle.NONE)).contains("  Meanwhile: rest.");
  }
}
