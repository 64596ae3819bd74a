package hornbook.study.rulecase;

import hornbook.rulebook.RuleEntry;
import hornbook.rulebook.Rulebook;
import hornbook.rulebook.file.RuleFault;
import hornbook.rulebook.load.LoadedRules;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * The cases of somebody's own rules, run.
 *
 * @param rules the own rules, in the order of their ids
 * @param cases those that were found and run: each is a foot that fires and a near-miss
 * @param faults what did not do what it is there for
 */
public record OwnCases(List<RuleEntry> rules, List<RuleCase> cases, List<RuleFault> faults) {

  /**
   * Runs the case of every rule that is not of another rule base.
   *
   * @param folder the cases: {@code rules/<id>.yaml} below it
   */
  public static OwnCases run(LoadedRules loaded, Rulebook other, Path folder) throws IOException {
    List<RuleEntry> rules =
        loaded.book().rules().values().stream()
            .filter(rule -> !rule.equals(other.rules().get(rule.id())))
            .toList();
    CaseLibrary library = CaseLibrary.read(folder);
    CaseCheck check = new CaseCheck(loaded);
    List<RuleCase> cases = new ArrayList<>();
    List<RuleFault> faults = new ArrayList<>(library.faults());
    for (RuleEntry rule : rules) {
      boolean unread = library.faults().stream().anyMatch(found -> found.rule().equals(rule.id()));
      if (!library.rules().containsKey(rule.id()) && !unread) {
        faults.add(CaseCheck.missing(rule));
      }
      for (Map.Entry<String, RuleCase> one : library.rules().entrySet()) {
        if (one.getValue().rule().equals(rule.id())) {
          cases.add(one.getValue());
          faults.addAll(check.faults(one.getKey(), one.getValue()));
        }
      }
    }
    return new OwnCases(rules, List.copyOf(cases), List.copyOf(faults));
  }
}
