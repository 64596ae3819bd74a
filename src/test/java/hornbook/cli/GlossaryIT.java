package hornbook.cli;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** Words of the trade, by today's name and by older ones. */
class GlossaryIT {
  @Test
  void a_word_is_told_with_the_rules_that_use_it() {
    assertThat(Program.run("glossary", "thrush").done().out())
        .startsWith("thrush: ")
        .contains("hornbook rules show \"thrush\"");
  }

  @Test
  void an_older_word_leads_to_the_one_in_use() {
    String today = Program.run("glossary", "white line disease").done().out();
    assertThat(Program.run("glossary", "seedy", "toe").done().out()).isEqualTo(today);
    assertThat(today).contains("also: seedy toe");
    assertThat(Program.run("rules", "show", "seedy toe").done().out())
        .contains("white line disease");
  }

  @Test
  void alone_it_lists_every_word_in_order() {
    String all = Program.run("glossary").done().out();
    assertThat(
            all.lines().filter(line -> line.matches("\\S.*: .*")).map(line -> line.split(":")[0]))
        .hasSizeGreaterThan(80)
        .isSorted();
    assertThat(Program.run("glossary", "--format", "json").done().json().path("words"))
        .hasSizeGreaterThan(80);
  }

  @Test
  void a_word_nobody_knows_is_answered_with_the_nearest() {
    assertThat(Program.run("glossary", "thrsh").refused(2).err()).contains("nearest: thrush");
  }
}
