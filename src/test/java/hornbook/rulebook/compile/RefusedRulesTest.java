package hornbook.rulebook.compile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hornbook.rulebook.file.RuleBaseFaulty;
import hornbook.rulebook.file.RuleFault;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Whatever the engine takes offence at, its author is told which rule it was, in plain words. */
class RefusedRulesTest {
  private static final String GOOD = rule("Good", "F001", "word == \"sport\"");

  @Test
  void a_word_the_engine_keeps_for_itself_is_traced_to_its_rule() {
    String bad = rule("Bad", "F002", "word meets \"sport\"");
    refuses(
            Map.of(
                "fixing/one.drl",
                GOOD + bad,
                "fixing/two.drl",
                rule("Other", "F003", "word == \"x\"")))
        .containsExactly("fixing/one.drl:8: F002");
  }

  @Test
  void a_field_the_engine_does_not_find_is_traced_to_its_rule() {
    refuses(Map.of("fixing/one.drl", GOOD, "fixing/two.drl", rule("Bad", "F002", "wrod == \"x\"")))
        .containsExactly("fixing/two.drl:1: F002");
  }

  @Test
  void all_of_several_are_traced() {
    String bad = rule("Bad", "F002", "wrod == \"x\"");
    String worse = rule("Worse", "F003", "wrod == \"y\"");
    refuses(Map.of("fixing/one.drl", bad + GOOD + worse))
        .containsExactly("fixing/one.drl:1: F002", "fixing/one.drl:15: F003");
  }

  @Test
  void no_word_of_the_engine_reaches_the_author() {
    assertThatThrownBy(
            () -> RuleCompiler.compile(Map.of("a/b.drl", rule("Bad", "F002", "wrod == \"x\""))))
        .isInstanceOf(RuleBaseFaulty.class)
        .message()
        .doesNotContainIgnoringCase("drools")
        .doesNotContain("java")
        .doesNotContain("Exception")
        .contains("the engine does not take this rule");
  }

  private static org.assertj.core.api.ListAssert<String> refuses(Map<String, String> texts) {
    List<RuleFault> faults = List.of();
    try {
      RuleCompiler.compile(texts);
    } catch (RuleBaseFaulty faulty) {
      faults = faulty.faults();
    }
    assertThat(faults).allSatisfy(fault -> assertThat(fault.cure()).isNotBlank());
    return assertThat(
        faults.stream()
            .map(fault -> fault.file() + ":" + fault.line() + ": " + fault.rule())
            .toList());
  }

  private static String rule(String title, String id, String test) {
    return """
        rule "%s"
            @id(%s)
        when
            $x : Seen( what == "work", %s )
        then
            insert( Reason.speaksFor( "nail-on", $x ) );
        end
        """
        .formatted(title, id, test);
  }
}
