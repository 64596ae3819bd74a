package hornbook.rules;

import static org.assertj.core.api.Assertions.assertThat;

import hornbook.rulebook.file.RuleFault;
import hornbook.rulebook.load.LoadedRules;
import hornbook.rulebook.read.RulebookReader;
import hornbook.study.rulecase.CaseLibrary;
import hornbook.study.rulecheck.FiringCheck;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;

/** Everything a contributor can get wrong is named: where, what, and how to cure it. */
class WrongRulesTest {
  private static final int FEET = 400;

  @TempDir private Path folder;

  @Test
  void the_good_rule_base_has_no_fault() throws Exception {
    WrongRules.layOutGood(folder);
    assertThat(faults(folder, true)).isEmpty();
  }

  @Test
  void the_table_holds_many_and_each_says_what_is_wrong() throws Exception {
    assertThat(WrongRules.all()).hasSizeGreaterThanOrEqualTo(25);
    assertThat(WrongRules.all()).allSatisfy(wrong -> assertThat(wrong.faults()).isNotEmpty());
  }

  @TestFactory
  Stream<DynamicTest> every_fault_is_named_with_place_and_cure() throws Exception {
    return WrongRules.all().stream()
        .map(wrong -> DynamicTest.dynamicTest(wrong.what(), () -> named(wrong)));
  }

  private void named(WrongRules.Wrong wrong) throws Exception {
    Path own = folder.resolve(wrong.name());
    wrong.layOut(own);
    List<RuleFault> faults = new ArrayList<>(faults(own, wrong.fires()));
    for (Map<String, String> expected : wrong.faults()) {
      RuleFault found =
          faults.stream()
              .filter(fault -> fault.text().startsWith(expected.get("place")))
              .filter(fault -> fault.says().contains(expected.get("says")))
              .findFirst()
              .orElse(null);
      assertThat(found).as("%s among %s", expected, faults).isNotNull();
      assertThat(found.cure()).isNotBlank().contains(expected.get("cure"));
      faults.remove(found);
    }
    assertThat(faults).as("what is not named in the table").isEmpty();
  }

  private static List<RuleFault> faults(Path folder, boolean fires) throws Exception {
    RulebookReader.Draft draft = RulebookReader.inspect(folder.resolve("rules"));
    if (!draft.faults().isEmpty() || !fires) {
      return draft.faults();
    }
    LoadedRules rules = new LoadedRules(draft.book());
    return FiringCheck.of(rules, CaseLibrary.read(folder.resolve("cases")), FEET, 1).faults();
  }
}
