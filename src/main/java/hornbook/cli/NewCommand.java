package hornbook.cli;

import hornbook.assessment.BlankAssessment;
import hornbook.assessment.Limb;
import java.nio.file.Path;
import java.util.List;
import picocli.CommandLine.Model.CommandSpec;

/** Writes a blank assessment, with a word on every field. */
final class NewCommand implements Task {
  private static final String SCHEMA = "schema/hornbook-assessment-1.schema.json";

  private final Surroundings surroundings;
  private final Arguments arguments =
      new Arguments(
          this,
          "new",
          "A blank assessment to fill in, with a word on how to look at or measure each thing.",
          "",
          "Examples:",
          "  hornbook new --limb left-fore --output tansy.yaml",
          "  hornbook new --limb left-fore --limb right-fore --units inch --output tansy.yaml",
          "  hornbook new",
          "",
          "Then, when it is filled in: hornbook assess tansy.yaml",
          "");
  private final Value<List<Limb>> limbs =
      arguments.words(Limb.class, "the foot; may be given again", "--limb");
  private final UnitsOption units = new UnitsOption(arguments);
  private final OutputOption output = new OutputOption(arguments);

  NewCommand(Surroundings surroundings) {
    this.surroundings = surroundings;
  }

  @Override
  public CommandSpec spec() {
    return arguments.spec();
  }

  @Override
  public ExitCode run() {
    List<Limb> each = limbs.value().stream().distinct().toList();
    output.deliverNew(BlankAssessment.write(each, units.units(), schema()), surroundings);
    return ExitCode.DONE;
  }

  /**
   * Where an editor finds what may stand in the file; for a file alone, and a program that lies
   * somewhere.
   */
  private String schema() {
    Path home = surroundings.home();
    return output.toScreen() || home == null ? null : home.resolve(SCHEMA).toUri().toString();
  }
}
