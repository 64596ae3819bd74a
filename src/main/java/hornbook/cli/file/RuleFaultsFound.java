package hornbook.cli.file;

import hornbook.cli.base.ExitCode;
import hornbook.cli.base.Failure;
import hornbook.rulebook.file.RuleFault;
import java.nio.file.Path;
import java.util.List;

/** Tells what is wrong with a folder of rules: file, line, rule, and how to mend it. */
public final class RuleFaultsFound {
  private RuleFaultsFound() {}

  /** All of it, to end the command with code 65. */
  public static Failure in(Path folder, List<RuleFault> faults) {
    return in("the rules of " + folder, faults);
  }

  /** The same of what is named. */
  public static Failure in(String what, List<RuleFault> faults) {
    StringBuilder told = new StringBuilder();
    for (RuleFault fault : faults.stream().sorted().distinct().toList()) {
      told.append(fault.text()).append('\n');
    }
    int count = (int) faults.stream().distinct().count();
    told.append("hornbook: ").append(count).append(count == 1 ? " fault" : " faults");
    told.append(" in ").append(what).append("; nothing was written\n");
    return Failure.told(ExitCode.INVALID_INPUT, told.toString());
  }
}
