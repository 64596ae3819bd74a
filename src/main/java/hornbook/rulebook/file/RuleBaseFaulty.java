package hornbook.rulebook.file;

import java.util.List;
import java.util.stream.Collectors;

/** A rule base that cannot be used, with everything found wrong in it. */
public final class RuleBaseFaulty extends Exception {
  private static final long serialVersionUID = 1L;
  private final transient List<RuleFault> faults;

  public RuleBaseFaulty(List<RuleFault> faults) {
    super(faults.stream().sorted().map(RuleFault::text).collect(Collectors.joining("\n")));
    this.faults = faults.stream().sorted().distinct().toList();
  }

  public List<RuleFault> faults() {
    return faults;
  }
}
