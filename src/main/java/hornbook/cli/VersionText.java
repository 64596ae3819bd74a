package hornbook.cli;

import hornbook.cli.base.Surroundings;
import hornbook.rulebook.Rulebook;
import picocli.CommandLine.IVersionProvider;

/** The version of the program and of the rule base it carries. */
final class VersionText implements IVersionProvider {
  private final Surroundings surroundings;

  VersionText(Surroundings surroundings) {
    this.surroundings = surroundings;
  }

  @Override
  public String[] getVersion() {
    Rulebook book = surroundings.rules().book();
    String program = Hornbook.class.getPackage().getImplementationVersion();
    return new String[] {
      "hornbook " + (program == null ? "(not packaged)" : program),
      "rule base " + book.version() + " " + book.digest()
    };
  }
}
