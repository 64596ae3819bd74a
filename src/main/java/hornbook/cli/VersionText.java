package hornbook.cli;

import hornbook.rulebook.Rulebook;
import hornbook.rulebook.ShippedRules;
import picocli.CommandLine.IVersionProvider;

/** The version of the program and of the rule base it carries. */
final class VersionText implements IVersionProvider {
  @Override
  public String[] getVersion() {
    Rulebook book = ShippedRules.book();
    String program = Hornbook.class.getPackage().getImplementationVersion();
    return new String[] {
      "hornbook " + (program == null ? "(not packaged)" : program),
      "rule base " + book.version() + " " + book.digest()
    };
  }
}
